import type { ItemKey } from '../../../../core/quantities/items.ts'
import type { WorkedOut } from '../../../../core/work-out.ts'
import { LinkButton } from '../../../parts/Button.tsx'
import { MoneyRow } from '../../../parts/MoneyRow.tsx'
import { useWords } from '../../../words/use-words.tsx'
import { PlanChoice } from '../../fields/PlanChoice.tsx'
import { PlanField } from '../../fields/PlanField.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'
import { cardHref } from '../../route.ts'
import { Worked } from '../../working/Worked.tsx'
import { OwnedPart } from './OwnedPart.tsx'
import { LengthsSold, SectionPick } from './StockPart.tsx'

/** Trays: how many, of what timber, how they sit clear of the fire. */
export function TraysCard({ worked }: { readonly worked: WorkedOut }) {
  const { say } = useWords()
  const { plan } = usePlan()
  return (
    <>
      <div className="fields">
        <PlanField at="trays.perChamber" />
        <PlanField at="trays.spares" />
      </div>
      <TrayFigures worked={worked} />
      <h3>{say('trays.seat')}</h3>
      <div className="fields">
        <PlanField at="trays.setbackM" />
        <PlanField at="trays.gapM" />
        <PlanField at="trays.handleM" />
      </div>
      <h3>{say('trays.frame')}</h3>
      <div className="fields">
        <SectionPick />
        <PlanField at="trays.railThicknessM" />
        <PlanField at="trays.railDepthM" />
        <PlanField at="trays.battens" />
      </div>
      <PlanChoice at="trays.corner" name={say('trays.corner')} names="corner" keys={['butt', 'lap', 'half-lap']} />
      <PlanChoice at="trays.cover" name={say('trays.cover')} names="cover" keys={['board', 'sheet', 'framed']} />
      <h3>{say('trays.mesh')}</h3>
      <div className="fields">
        <PlanField at="trays.meshWireM" />
        <PlanField at="trays.meshPitchM" />
        <PlanField at="trays.meshLapM" />
      </div>
      <LengthsSold />
      <OwnedPart />
      <h3>{say('trays.cutting')}</h3>
      <div className="fields">
        <PlanField at="trays.kerfM" />
        <PlanField at="trays.keepM" />
      </div>
      <LinkButton href={cardHref(plan.id, 'plan', 'cutting')} shape="big">
        {say('cut.open')}
      </LinkButton>
      <LinkButton href={cardHref(plan.id, 'plan', 'repair')} shape="big">
        {say('repair.title')}
      </LinkButton>
    </>
  )
}

/** What one tray weighs and takes, what all of them take, and how high a full stack stands: each opens its working. */
function TrayFigures({ worked: { tray, needs } }: { readonly worked: WorkedOut }) {
  const { nameOf } = useWords()
  const { mass, fixings, strength } = tray
  const all = (item: ItemKey) =>
    needs.filter((need) => need.item === item && need.use === 'trays').map(({ net }) => net)
  const figures = [
    tray.count,
    mass.timber,
    mass.mesh,
    mass.empty,
    mass.loaded,
    tray.stackHeight,
    tray.topHeight,
    strength.mostSpan,
    fixings.nails,
    ...all('nails'),
    fixings.staples,
    ...all('staples'),
  ]
  return (
    <div>
      {figures.map((of) => (
        <MoneyRow key={of.id} name={nameOf(of)}>
          <Worked of={of} />
        </MoneyRow>
      ))}
    </div>
  )
}
