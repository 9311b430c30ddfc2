import { airFindings } from '../../../core/heat/air-findings.ts'
import { useWords } from '../../words/use-words.tsx'
import { PlanField } from '../fields/PlanField.tsx'
import { usePlan } from '../fields/plan-in-hand.ts'
import { Findings } from '../plan/Findings.tsx'

/** How a firing is run: its stages, the air of the place, the wood. */
export function FiringCard() {
  const { say } = useWords()
  const { plan } = usePlan()
  return (
    <>
      <div className="fields">
        <PlanField at="firing.cookHours" />
        <PlanField at="firing.cookDegC" />
        <PlanField at="firing.dryHours" />
        <PlanField at="firing.dryDegC" />
      </div>
      <h3>{say('run.air-wood')}</h3>
      <div className="fields">
        <PlanField at="firing.airDegC" />
        <PlanField at="firing.airHumidity" />
        <PlanField at="firing.woodMoisture" />
      </div>
      <Findings findings={airFindings(plan)} />
    </>
  )
}
