import { useWords } from '../../../words/use-words.tsx'
import { PlanField } from '../../fields/PlanField.tsx'

/** What concrete and mortar are mixed of, and what is lost on the way. */
export function MixesCard() {
  const { say } = useWords()
  return (
    <>
      <h3>{say('mixes.concrete')}</h3>
      <div className="fields">
        <PlanField at="mixes.concrete.cement" />
        <PlanField at="mixes.concrete.sand" />
        <PlanField at="mixes.concrete.stone" />
        <PlanField at="mixes.concrete.dryFactor" />
      </div>
      <h3>{say('mixes.mortar')}</h3>
      <div className="fields">
        <PlanField at="mixes.mortar.cement" />
        <PlanField at="mixes.mortar.clay" />
        <PlanField at="mixes.mortar.sand" />
        <PlanField at="mixes.mortar.dryFactor" />
      </div>
      <h3>{say('mixes.waste')}</h3>
      <div className="fields">
        <PlanField at="waste.units" />
        <PlanField at="waste.concrete" />
        <PlanField at="waste.mortar" />
        <PlanField at="waste.fill" />
        <PlanField at="waste.timber" />
        <PlanField at="waste.mesh" />
      </div>
    </>
  )
}
