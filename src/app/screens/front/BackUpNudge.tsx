import { NoticeBox } from '../../parts/NoticeBox.tsx'
import { useApp } from '../../state/use-app.ts'
import { showDay } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import { BackUpButton } from '../settings/BackUpButton.tsx'
import { useNow } from '../use-now.ts'

const WEEK_MS = 7 * 86_400_000

/** Reminds of a copy elsewhere once a week of work hangs on this one phone. Examples need none. */
export function BackUpNudge() {
  const { say } = useWords()
  const nowMs = useNow()
  const rows = useApp((state) => state.rows)
  const last = useApp((state) => state.backedUpAtMs)
  const worked = rows.filter(
    ({ plan, trouble, savedAtMs }) => (plan?.example === false || trouble !== null) && savedAtMs > (last ?? 0),
  )
  if (worked.length === 0 || (last !== null && nowMs - last < WEEK_MS)) return null
  return (
    <NoticeBox icon="saved" action={<BackUpButton />}>
      {last === null ? say('keeping.no-back-up') : say('keeping.last-back-up', { when: showDay(last) })}
    </NoticeBox>
  )
}
