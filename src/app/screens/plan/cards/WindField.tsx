import { bearingOfPoint, COMPASS_POINTS, compassPoint, type CompassPoint } from '../../../../core/geometry/wind.ts'
import { PickList } from '../../../parts/PickList.tsx'
import { useWords } from '../../../words/use-words.tsx'
import { fieldWay } from '../../fields/field-way.ts'
import { NumberField } from '../../fields/PlanField.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'

/** A bearing by the name of its wind, and in degrees for who has a compass; the plan keeps degrees. */
export function WindField({ at }: { readonly at: 'windDayDeg' | 'windNightDeg' | 'frontDeg' | 'houseDeg' }) {
  const words = useWords()
  const { say, named } = words
  const { plan, set } = usePlan()
  const bearingDeg = plan.place[at]
  const name = named(`field.place.${at}`)
  const options: readonly { key: CompassPoint | 'unknown'; label: string }[] = [
    { key: 'unknown', label: say('place.unknown') },
    ...COMPASS_POINTS.map((point) => ({ key: point, label: named(`wind.${point}`) })),
  ]
  return (
    <div className="stack">
      <PickList
        name={name}
        value={bearingDeg === null ? 'unknown' : compassPoint(bearingDeg)}
        options={options}
        onChange={(wind) => set({ [`place.${at}`]: wind === 'unknown' ? null : bearingOfPoint(wind) })}
      />
      {bearingDeg !== null && (
        <NumberField
          id={`place.${at}`}
          name={say('place.in-degrees', { name })}
          value={bearingDeg}
          way={fieldWay(`place.${at}`, words)}
          onChange={(deg) => set({ [`place.${at}`]: deg })}
        />
      )}
    </div>
  )
}
