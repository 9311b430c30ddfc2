import { Button } from '../parts/Button.tsx'
import { NoticeBox } from '../parts/NoticeBox.tsx'
import type { OpenPlan } from '../state/app-state.ts'
import { savePlanFile } from '../state/save-plan-file.ts'
import { useWords } from '../words/use-words.tsx'

/** Stands for as long as the phone does not keep this plan: why, and the way to keep it all the same. */
export function KeepingNotice({ saving, planId }: { readonly saving: OpenPlan['saving']; readonly planId: string }) {
  const { say } = useWords()
  if (saving.kind !== 'not-saved' && saving.kind !== 'memory-only') return null
  return (
    <NoticeBox
      icon="lost"
      tone="lost"
      action={
        <Button icon="file" onPress={() => void savePlanFile(planId)}>
          {say('front.export')}
        </Button>
      }
    >
      {saving.kind === 'memory-only'
        ? say('keeping.storage.memory-only')
        : say('keeping.not-kept', { why: say(`keeping.saving.${saving.reason}`) })}
    </NoticeBox>
  )
}
