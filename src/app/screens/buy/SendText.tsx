import type { WorkedOut } from '../../../core/work-out.ts'
import { Button } from '../../parts/Button.tsx'
import { notify } from '../../state/notices.ts'
import { useWords } from '../../words/use-words.tsx'
import { listAsText } from './list-as-text.ts'

/** Hands text to another app of the phone where the phone can, else to the clipboard. */
async function send(title: string, text: string): Promise<'sent' | 'copied' | 'failed' | 'cancelled'> {
  try {
    // Absent in some browsers, whatever the type says.
    const { share } = navigator as Partial<Pick<Navigator, 'share'>>
    if (share !== undefined) {
      await navigator.share({ title, text })
      return 'sent'
    }
    await navigator.clipboard.writeText(text)
    return 'copied'
  } catch (error) {
    return error instanceof DOMException && error.name === 'AbortError' ? 'cancelled' : 'failed'
  }
}

/** The list as a message. */
export function SendText({ worked }: { readonly worked: WorkedOut }) {
  const words = useWords()
  const { say } = words
  const press = async () => {
    const outcome = await send(worked.plan.name, listAsText(worked, words, Date.now()))
    if (outcome === 'copied') notify({ key: 'buy.text-copied' })
    if (outcome === 'failed') notify({ key: 'buy.text-failed' })
  }
  return (
    <Button shape="big" icon="words" onPress={() => void press()}>
      {say('buy.send-text')}
    </Button>
  )
}
