import { useState } from 'react'
import { measuredSides, UNIT_SIDES } from '../../../../core/layout/measured-units.ts'
import { Button } from '../../../parts/Button.tsx'
import { useWords } from '../../../words/use-words.tsx'
import { fieldWay } from '../../fields/field-way.ts'
import { NumberField } from '../../fields/PlanField.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'

const MOST_SAMPLES = 30

/** Several real units measured: their mean to lay by, and how far they differ. */
export function MeasuredUnits() {
  const words = useWords()
  const { say, named, sizes, length } = words
  const { plan, set } = usePlan()
  const { unit, samples } = plan.walls
  const [next, setNext] = useState<[number, number, number]>([unit.lengthM, unit.widthM, unit.heightM])
  const sides = measuredSides(plan)
  const means = sides.map(({ mean }) => Math.round(mean.value * 1e4) / 1e4)
  const isUsed = UNIT_SIDES.every((side, index) => Math.abs(unit[side] - (means[index] ?? unit[side])) < 1e-6)
  return (
    <section className="stack">
      <h3>{say('walls.measured')}</h3>
      <p className="quiet">{say('walls.measured-why')}</p>
      {samples.length > 0 && (
        <ul className="stack">
          {samples.map((sample, index) => (
            <li key={index} className="measured">
              <span>{sizes(...sample)}</span>
              <Button
                label={say('walls.measured-remove', { number: index + 1 })}
                icon="close"
                onPress={() => set({ 'walls.samples': samples.filter((_, at) => at !== index) })}
              >
                {''}
              </Button>
            </li>
          ))}
        </ul>
      )}
      {sides.map(({ side, leastM, mostM }) => (
        <p key={side}>
          {say('walls.measured-spread', {
            side: named(`unit-side.${side}`),
            least: length(leastM),
            most: length(mostM),
          })}
        </p>
      ))}
      {sides.length > 0 &&
        (isUsed ? (
          <p>{say('walls.measured-in-use', { sizes: sizes(...means) })}</p>
        ) : (
          <Button
            tone="solid"
            onPress={() => {
              const [lengthM = unit.lengthM, widthM = unit.widthM, heightM = unit.heightM] = means
              set({ 'walls.unit': { ...unit, lengthM, widthM, heightM } })
            }}
          >
            {say('walls.measured-use', { sizes: sizes(...means) })}
          </Button>
        ))}
      <fieldset className="fields">
        <legend className="picks-name">{say('walls.measured-new')}</legend>
        {UNIT_SIDES.map((side, index) => (
          <NumberField
            key={side}
            id={`measured-${side}`}
            name={named(`unit-side.${side}`)}
            value={next[index] ?? unit[side]}
            way={fieldWay(`walls.unit.${side}`, words)}
            onChange={(value) => {
              setNext(([a, b, c]) => [index === 0 ? value : a, index === 1 ? value : b, index === 2 ? value : c])
            }}
          />
        ))}
      </fieldset>
      <Button disabled={samples.length >= MOST_SAMPLES} onPress={() => set({ 'walls.samples': [...samples, next] })}>
        {say('walls.measured-add')}
      </Button>
    </section>
  )
}
