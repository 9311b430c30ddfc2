import { Sheet } from '../../parts/Sheet.tsx'
import { useWords } from '../../words/use-words.tsx'
import { PlanField } from '../fields/PlanField.tsx'
import { useFieldInSight } from '../fields/use-field-in-sight.ts'
import type { PlanRoute } from '../PlanHere.tsx'
import { placeHref } from '../route.ts'
import { useCloseCard } from '../use-close-card.ts'

/** How a firing is run: its stages, the air, the wood. */
export function FiringSheet({ route }: { readonly route: PlanRoute }) {
  const { say } = useWords()
  const close = useCloseCard(placeHref(route.id, 'run'))
  useFieldInSight(route.field)
  return (
    <Sheet title={say('card.firing')} closeLabel={say('app.close')} onClose={close} height="full">
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
      <h3>{say('card.run')}</h3>
      <div className="fields">
        <PlanField at="run.firingDaysPerYear" />
        <PlanField at="run.kilnLifeYears" />
        <PlanField at="run.trayLifeYears" />
      </div>
    </Sheet>
  )
}
