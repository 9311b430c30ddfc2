import { useState } from 'react'
import { LIMITS } from '../../../core/plan/limits.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { Button } from '../../parts/Button.tsx'
import { showIsoDay } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import { newKey } from '../buy/new-key.ts'
import { fieldWay } from '../fields/field-way.ts'
import { usePlan } from '../fields/plan-in-hand.ts'
import { NumberField } from '../fields/PlanField.tsx'
import { Worked } from '../working/Worked.tsx'
import { useTick } from './use-tick.ts'

/** Units that broke: counted against what the list allows, and bought beside it where they are more. */
export function BrokenUnits({ worked }: { readonly worked: WorkedOut }) {
  const words = useWords()
  const { say, named, number } = words
  const { plan, set } = usePlan()
  const tick = useTick()
  const [units, setUnits] = useState(1)
  const entries = Object.entries(plan.built.broken)
  const more = worked.needs.find(({ use }) => use === 'broken')
  const allowed = worked.needs.find(({ item, use }) => item === 'wall-unit' && use === 'walls')
  return (
    <section className="stack">
      <h2>{say('build.broken')}</h2>
      <ul>
        {entries.map(([id, entry]) => (
          <li key={id} className="lead">
            <span>{say('build.broken-on', { count: entry.units, day: showIsoDay(entry.day) })}</span>
            <Button
              icon="close"
              onPress={() => {
                set({ [`built.broken.${id}`]: undefined })
              }}
            >
              {say('build.take-away')}
            </Button>
          </li>
        ))}
      </ul>
      {allowed && (
        <p className="quiet">
          {say('build.broken-allowed', {
            allowed: number(allowed.gross.value - allowed.net.value, 1),
            broken: entries.reduce((sum, [, entry]) => sum + entry.units, 0),
          })}
        </p>
      )}
      {more && (
        <p className="lead">
          <span>{say('build.broken-more')}</span>
          <Worked of={more.net} label={named('item.wall-unit')} />
        </p>
      )}
      <NumberField
        name={say('build.broken-now')}
        value={units}
        way={fieldWay('built.units', words)}
        limit={{ ...LIMITS['built.units'], min: 1 }}
        onChange={setUnits}
      />
      <Button
        shape="big"
        icon="plus"
        onPress={() => {
          if (set({ [`built.broken.${newKey()}`]: { units, ...tick() } })) setUnits(1)
        }}
      >
        {say('build.add-broken', { count: units })}
      </Button>
    </section>
  )
}
