import { useRef, useState, type ChangeEvent } from 'react'
import { Button } from '../../parts/Button.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { openFile, type FileProblem } from '../../state/file-actions.ts'
import { useWords } from '../../words/use-words.tsx'
import { fileProblemText } from '../file-problem-text.ts'
import { placeHref } from '../route.ts'
import { goTo } from '../use-route.ts'

/** Opens a plan from a file; what is wrong with the file is said, and nothing changes then. */
export function OpenFileButton() {
  const { say } = useWords()
  const input = useRef<HTMLInputElement>(null)
  const [problem, setProblem] = useState<FileProblem | null>(null)
  const take = async (event: ChangeEvent<HTMLInputElement>) => {
    const chosen = event.currentTarget
    const [file] = chosen.files ?? []
    if (file === undefined) return
    const opened = await openFile(file)
    chosen.value = ''
    if (opened.ok) goTo(placeHref(opened.value, 'plan'))
    else setProblem(opened.problems[0] ?? null)
  }
  return (
    <>
      <Button shape="over" icon="file" onPress={() => input.current?.click()}>
        {say('front.open-file')}
      </Button>
      <input
        ref={input}
        type="file"
        className="hide"
        accept=".json,application/json"
        tabIndex={-1}
        aria-label={say('front.open-file')}
        onChange={(event) => void take(event)}
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
