import type { Finding } from '../../../core/basics/finding.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { KilnDrawing, type View } from '../../drawings/KilnDrawing.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { useWords } from '../../words/use-words.tsx'
import { useFieldInSight } from '../fields/use-field-in-sight.ts'
import type { PlanRoute } from '../PlanHere.tsx'
import { placeHref } from '../route.ts'
import { useCloseCard } from '../use-close-card.ts'
import { CardWords } from '../terms/CardWords.tsx'
import { KeyFigure } from '../working/Worked.tsx'
import type { PlanCard } from './cards.ts'
import { CatchCard } from './cards/CatchCard.tsx'
import { ChambersCard } from './cards/ChambersCard.tsx'
import { GroundCard } from './cards/GroundCard.tsx'
import { MixesCard } from './cards/MixesCard.tsx'
import { MoneyCard } from './cards/MoneyCard.tsx'
import { OpeningsCard } from './cards/OpeningsCard.tsx'
import { PlaceCard } from './cards/PlaceCard.tsx'
import { ShowCard } from './cards/ShowCard.tsx'
import { TrayPicture } from './cards/TrayPicture.tsx'
import { TraysCard } from './cards/TraysCard.tsx'
import { WallsCard } from './cards/WallsCard.tsx'
import { Findings } from './Findings.tsx'
import { MoneyFigure } from './MoneyFigure.tsx'
import { FindingsAloud, TotalAloud } from './Aloud.tsx'

/** The drawing that shows what a decision changes. */
const SHOWN: Partial<Record<PlanCard, View>> = { chambers: 'plan', openings: 'front' }

/** One decision opened: its boxes, what it makes of the drawing, and at the foot what it does to fish, units and money. */
export function CardSheet({
  card,
  route,
  worked,
  findings,
}: {
  readonly card: PlanCard
  readonly route: PlanRoute
  readonly worked: WorkedOut
  readonly findings: readonly Finding[]
}) {
  const { say, named } = useWords()
  const close = useCloseCard(placeHref(route.id, route.place))
  useFieldInSight(route.field)
  const isHere = (finding: Finding) => finding.card === card && finding.level !== 'good'
  const view = SHOWN[card]
  const units = worked.needs.find(({ item }) => item === 'wall-unit')
  return (
    <Sheet
      title={say(`card.${card}`)}
      closeLabel={say('app.close')}
      onClose={close}
      height="full"
      foot={
        <>
          <div className="figs foot-figs">
            <KeyFigure label={say('plan.fish')} of={worked.fish.freshPerDay} />
            {units && <KeyFigure label={named(`plan.units.${worked.plan.walls.unit.family}`)} of={units.net} />}
            <MoneyFigure costs={worked.costs} planId={route.id} />
          </div>
          <TotalAloud costs={worked.costs} />
          <FindingsAloud findings={findings} />
        </>
      }
    >
      {view !== undefined && (
        <div className="one-view">
          <KilnDrawing view={view} worked={worked} findings={findings} />
        </div>
      )}
      {card === 'trays' && <TrayPicture worked={worked} />}
      {findings.some(isHere) && <Findings findings={findings} only={isHere} />}
      <Card card={card} worked={worked} />
      <CardWords card={card} />
    </Sheet>
  )
}

function Card({ card, worked }: { readonly card: PlanCard; readonly worked: WorkedOut }) {
  switch (card) {
    case 'catch':
      return <CatchCard />
    case 'chambers':
      return <ChambersCard />
    case 'walls':
      return <WallsCard worked={worked} />
    case 'openings':
      return <OpeningsCard />
    case 'ground':
      return <GroundCard worked={worked} />
    case 'trays':
      return <TraysCard worked={worked} />
    case 'place':
      return <PlaceCard worked={worked} />
    case 'mixes':
      return <MixesCard />
    case 'money':
      return <MoneyCard worked={worked} />
    case 'show':
      return <ShowCard />
    default:
      return card satisfies never
  }
}
