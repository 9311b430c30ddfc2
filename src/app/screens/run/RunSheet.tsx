import type { FiringLog } from '../../../core/schedule/firing-log.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { Sheet } from '../../parts/Sheet.tsx'
import { useWords } from '../../words/use-words.tsx'
import { useFieldInSight } from '../fields/use-field-in-sight.ts'
import type { PlanRoute } from '../PlanHere.tsx'
import { placeHref } from '../route.ts'
import { useCloseCard } from '../use-close-card.ts'
import { FiringCard } from './FiringCard.tsx'
import { HeatCard } from './HeatCard.tsx'
import { LogRows } from './LogRows.tsx'
import { MoneyOfFirings } from './MoneyOfFirings.tsx'
import { OneFiring } from './OneFiring.tsx'
import { OnePart } from './OnePart.tsx'
import { PricesCard } from './PricesCard.tsx'
import type { RunCard } from './run-card.ts'
import { UpkeepList } from './UpkeepList.tsx'

export interface RunSheetProps {
  readonly worked: WorkedOut
  readonly log: FiringLog
  readonly planId: string
  readonly onClose: () => void
}

/** What opens over Run: loaded when the first of it is opened. */
export function RunSheet({
  card,
  route,
  worked,
  log,
}: {
  readonly card: RunCard
  readonly route: PlanRoute
  readonly worked: WorkedOut
  readonly log: FiringLog
}) {
  const { say } = useWords()
  const onClose = useCloseCard(placeHref(route.id, 'run'))
  useFieldInSight(route.field)
  const props = { worked, log, planId: route.id, onClose }
  if (card.kind === 'one') return <OneFiring key={card.id} id={card.id} {...props} />
  if (card.kind === 'part') return <OnePart key={card.part} part={card.part} {...props} />
  return (
    <Sheet title={say(`card.${card.kind}`)} closeLabel={say('app.close')} onClose={onClose} height="full">
      <Card card={card.kind} {...props} />
    </Sheet>
  )
}

function Card({ card, ...props }: RunSheetProps & { readonly card: Exclude<RunCard['kind'], 'one' | 'part'> }) {
  switch (card) {
    case 'firing':
      return <FiringCard />
    case 'run':
      return <PricesCard />
    case 'log':
      return <LogRows log={props.log} planId={props.planId} />
    case 'money':
      return <MoneyOfFirings {...props} />
    case 'upkeep':
      return <UpkeepList {...props} />
    case 'heat':
      return <HeatCard {...props} />
    default:
      return card satisfies never
  }
}
