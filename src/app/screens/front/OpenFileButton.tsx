import { useState } from 'react'
import { FileButton } from '../../parts/FileButton.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { openFile, type FileProblem } from '../../state/file-actions.ts'
import { useWords } from '../../words/use-words.tsx'
import { fileProblemText } from '../file-problem-text.ts'
import { placeHref } from '../route.ts'
import { goTo } from '../use-route.ts'

/** Opens a plan from a file; what is wrong with the file is said, and nothing changes then. */
export function OpenFileButton() {
  const { say } = useWords()
  const [problem, setProblem] = useState<FileProblem | null>(null)
  const take = async ([file]: readonly File[]) => {
    if (file === undefined) return
    const opened = await openFile(file)
    if (opened.ok) goTo(placeHref(opened.value, 'plan'))
    else setProblem(opened.problems[0] ?? null)
  }
  return (
    <>
      <FileButton
        shape="over"
        icon="file"
        label={say('front.open-file')}
        accept=".json,application/json"
        onFiles={take}
      />
      {problem && (
        <Sheet
          title={say('front.file-failed')}
          closeLabel={say('app.close')}
          onClose={() => {
            setProblem(null)
          }}
        >
          <p role="alert">{fileProblemText(problem)}</p>
        </Sheet>
      )}
    </>
  )
}
