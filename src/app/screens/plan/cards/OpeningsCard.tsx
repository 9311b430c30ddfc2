import { useWords } from '../../../words/use-words.tsx'
import { PlanPicks } from '../../fields/PlanChoice.tsx'
import { PlanField } from '../../fields/PlanField.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'

/** The fire openings: one in the front of each chamber, and what carries the wall over it. */
export function OpeningsCard() {
  const { say } = useWords()
  const { plan } = usePlan()
  const { head } = plan.openings
  return (
    <>
      <div className="fields">
        <PlanField at="openings.widthM" />
        <PlanField at="openings.heightM" />
      </div>
      <PlanPicks
        at="openings.head"
        name={say('openings.head')}
        names="head"
        keys={['lintel', 'steel', 'corbel', 'arch']}
      />
      {(head === 'lintel' || head === 'steel') && <PlanField at="openings.bearingM" />}
      <p className="quiet">{say('openings.caution')}</p>
    </>
  )
}
