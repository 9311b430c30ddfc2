import type { WorkedOut } from '../../../core/work-out.ts'
import { LinkButton } from '../../parts/Button.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { useWords } from '../../words/use-words.tsx'
import { Caution } from '../build/Caution.tsx'
import type { PlanRoute } from '../PlanHere.tsx'
import { cardHref, placeHref } from '../route.ts'
import { useCloseCard } from '../use-close-card.ts'
import { Findings } from '../plan/Findings.tsx'
import { CutPlans } from './CutPlans.tsx'

/** All cutting of the kiln on one sheet: what the carpenter props beside the bench. */
export function CuttingSheet({ route, worked }: { readonly route: PlanRoute; readonly worked: WorkedOut }) {
  const { say, length } = useWords()
  const close = useCloseCard(placeHref(route.id, route.place))
  return (
    <Sheet title={say('cut.title')} closeLabel={say('app.close')} onClose={close} height="full">
      <Findings findings={worked.purchase.findings} />
      <Caution>{say('task-caution.saw')}</Caution>
      <p className="quiet">{say('cut.kerf', { kerf: length(worked.plan.trays.kerfM) })}</p>
      <CutPlans purchase={worked.purchase} />
      <LinkButton href={cardHref(route.id, route.place, 'repair')} shape="big">
        {say('repair.title')}
      </LinkButton>
    </Sheet>
  )
}
