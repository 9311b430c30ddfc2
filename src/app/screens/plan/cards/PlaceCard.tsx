import { bearingOfPoint, COMPASS_POINTS, compassPoint, type CompassPoint } from '../../../../core/geometry/wind.ts'
import { PickList } from '../../../parts/PickList.tsx'
import { useWords } from '../../../words/use-words.tsx'
import { PlanChoice } from '../../fields/PlanChoice.tsx'
import { MaybeField, PlanField } from '../../fields/PlanField.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'

/** Where the kiln stands: winds, neighbours, shelter. */
export function PlaceCard() {
  const { say } = useWords()
  const { plan } = usePlan()
  const { place } = plan
  return (
    <>
      <h3>{say('place.wind')}</h3>
      <div className="fields">
        <WindField at="windDayDeg" />
        <WindField at="windNightDeg" />
      </div>
      <PlanChoice at="place.facing" name={say('place.facing')} names="facing" keys={['into-wind', 'lee', 'own']} />
      {place.facing === 'own' && <WindField at="frontDeg" />}
      <h3>{say('place.distances')}</h3>
      <div className="fields">
        <MaybeField at="place.houseM" begin={20} />
        {place.houseM !== null && <WindField at="houseDeg" />}
        <MaybeField at="place.thatchM" begin={20} />
        <MaybeField at="place.boundaryM" begin={10} />
        <MaybeField at="place.fuelStoreM" begin={5} />
        <MaybeField at="place.treesM" begin={10} />
      </div>
      <h3>{say('place.shelter')}</h3>
      <PlanChoice at="place.shelter" name={say('place.shelter')} names="shelter" keys={['none', 'open-roof']} />
      <p className="quiet">{say('place.shelter-why')}</p>
      {place.shelter === 'open-roof' && (
        <div className="fields">
          <PlanField at="place.shelterHeadroomM" />
          <PlanField at="place.shelterOverhangM" />
        </div>
      )}
    </>
  )
}

/** A bearing by the name of its wind; the plan keeps degrees. */
function WindField({ at }: { readonly at: 'windDayDeg' | 'windNightDeg' | 'frontDeg' | 'houseDeg' }) {
  const { say, named } = useWords()
  const { plan, set } = usePlan()
  const bearingDeg = plan.place[at]
  const options: readonly { key: CompassPoint | 'unknown'; label: string }[] = [
    { key: 'unknown', label: say('place.unknown') },
    ...COMPASS_POINTS.map((point) => ({ key: point, label: named(`wind.${point}`) })),
  ]
  return (
    <PickList
      name={named(`field.place.${at}`)}
      value={bearingDeg === null ? 'unknown' : compassPoint(bearingDeg)}
      options={options}
      onChange={(wind) => set({ [`place.${at}`]: wind === 'unknown' ? null : bearingOfPoint(wind) })}
    />
  )
}
