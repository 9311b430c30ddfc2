import { Button } from '../../parts/Button.tsx'
import { NoticeBox } from '../../parts/NoticeBox.tsx'
import { applyUpdate } from '../../state/offline-actions.ts'
import { useApp } from '../../state/use-app.ts'
import { useWords } from '../../words/use-words.tsx'

/** Says that the app works without a network only where that is true, and offers a newer version without pressing it on anyone. */
export function OfflineLine() {
  const { say } = useWords()
  const offline = useApp((state) => state.offline)
  if (offline === 'ready') return <NoticeBox icon="offline">{say('offline.ready')}</NoticeBox>
  if (offline === 'failed') return <NoticeBox icon="caution">{say('offline.failed')}</NoticeBox>
  if (offline !== 'update-waiting') return null
  return (
    <NoticeBox icon="redo" action={<Button onPress={() => void applyUpdate()}>{say('offline.update-now')}</Button>}>
      {say('offline.update')}
    </NoticeBox>
  )
}
