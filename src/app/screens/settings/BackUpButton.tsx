import { Button } from '../../parts/Button.tsx'
import { savePlansFile } from '../../state/save-plan-file.ts'
import { todayIso } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'

/** Every plan of this phone as one file, to be kept somewhere else. */
export function BackUpButton() {
  const { say } = useWords()
  return (
    <Button shape="big" icon="file" onPress={() => void savePlansFile(`${say('keeping.file-stem')}-${todayIso()}`)}>
      {say('keeping.back-up')}
    </Button>
  )
}
