import { LinkButton } from '../../parts/Button.tsx'
import { NoticeBox } from '../../parts/NoticeBox.tsx'
import { useApp } from '../../state/use-app.ts'
import { useWords } from '../../words/use-words.tsx'

/** Says that two phones answered the same decision differently, for as long as nobody has chosen. */
export function DifferencesNotice({ href }: { readonly href: string }) {
  const { say } = useWords()
  const count = useApp(({ differences }) => differences.length)
  if (count === 0) return null
  return (
    <NoticeBox icon="people" action={<LinkButton href={href}>{say('differences.open')}</LinkButton>}>
      {say('differences.notice', { count })}
    </NoticeBox>
  )
}
