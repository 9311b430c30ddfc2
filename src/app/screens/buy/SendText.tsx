import type { WorkedOut } from '../../../core/work-out.ts'
import { Button } from '../../parts/Button.tsx'
import { notify } from '../../state/notices.ts'
import { sendText } from '../../state/paper-actions.ts'
import { useWords } from '../../words/use-words.tsx'
import { useNow } from '../use-now.ts'
import { listAsTexts } from './list-as-text.ts'

const TOLD = {
  copied: 'buy.text-copied',
  cancelled: 'buy.text-cancelled',
  failed: 'buy.text-failed',
} as const

/** The list as a message, or as several where one would be too long: a phone takes one at a press. */
export function SendText({ worked }: { readonly worked: WorkedOut }) {
  const words = useWords()
  const { say } = words
  const texts = listAsTexts(worked, words, useNow())
  const press = async (text: string) => {
    const outcome = await sendText(worked.plan.name, text)
    if (outcome !== 'shared') notify({ key: TOLD[outcome] })
  }
  return texts.map((text, index) => (
    <Button key={index} shape="big" icon="words" onPress={() => void press(text)}>
      {texts.length === 1 ? say('buy.send-text') : say('buy.send-part', { n: index + 1, of: texts.length })}
    </Button>
  ))
}
