import { LinkButton } from '../../../parts/Button.tsx'
import { useWords } from '../../../words/use-words.tsx'
import { PlanChoice } from '../../fields/PlanChoice.tsx'
import { PlanField } from '../../fields/PlanField.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'
import { cardHref } from '../../route.ts'
import { OwnedPart } from './OwnedPart.tsx'
import { LengthsSold, SectionPick } from './StockPart.tsx'

/** Trays: how many, of what timber, how they sit clear of the fire. */
export function TraysCard() {
  const { say } = useWords()
  const { plan } = usePlan()
  return (
    <>
      <div className="fields">
        <PlanField at="trays.perChamber" />
        <PlanField at="trays.spares" />
      </div>
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
