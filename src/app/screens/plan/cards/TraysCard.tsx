import type { WorkedOut } from '../../../../core/work-out.ts'
import { LinkButton } from '../../../parts/Button.tsx'
import { useWords } from '../../../words/use-words.tsx'
import { PlanChoice } from '../../fields/PlanChoice.tsx'
import { PlanField } from '../../fields/PlanField.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'
import { cardHref } from '../../route.ts'
import { KeyFigure } from '../../working/Worked.tsx'
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

/** What one tray weighs and takes, and how high a full stack stands: each opens its working. */
function TrayFigures({ worked: { tray } }: { readonly worked: WorkedOut }) {
  const { named } = useWords()
  const { mass, fixings } = tray
  const figures = [
    tray.count,
    mass.empty,
    mass.loaded,
    tray.stackHeight,
    tray.topHeight,
    fixings.nails,
    fixings.nailMass,
    fixings.staples,
  ]
  return (
    <div className="figs">
      {figures.map((of) => (
        <KeyFigure key={of.id} label={named(`working.${of.id}`)} of={of} />
      ))}
    </div>
  )
}
