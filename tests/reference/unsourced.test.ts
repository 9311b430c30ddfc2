import path from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Derived } from '../../src/core/basics/derived.ts'
import { drying } from '../../src/core/fish/drying.ts'
import { fuel } from '../../src/core/heat/fuel.ts'
import { kilnHeat } from '../../src/core/heat/kiln-heat.ts'
import { SOURCES } from '../../src/core/sources/sources.ts'
import { workOut } from '../../src/core/work-out.ts'
import { derivedIn } from '../laws/formula.ts'
import { anyPlan } from '../laws/plans.ts'

const file = path.resolve(import.meta.dirname, '../../shared/unsourced.json')

interface Unsourced {
  readonly id: string
  readonly args?: Derived['args']
  readonly kind: 'practice' | 'memory'
  readonly unit: Derived['unit']
  readonly least: number
  readonly most: number
}

/** Figures that some plan rests on and that no print gives: practice or memory, and between which values they lie. */
function unsourced(): readonly Unsourced[] {
  const found = new Map<string, Unsourced>()
  const look = (root: object) => {
    for (const { id, args, source, unit, value } of derivedIn(root) as readonly Derived[]) {
      const kind = source === undefined ? 'none' : SOURCES[source].kind
      if (kind !== 'practice' && kind !== 'memory') continue
      const key = `${id} ${JSON.stringify(args ?? {})}`
      const { least = value, most = value } = found.get(key) ?? {}
      const range = { least: Math.min(least, value), most: Math.max(most, value) }
      found.set(key, { id, ...(args && { args }), kind, unit, ...range })
    }
  }
  for (const plan of fc.sample(anyPlan, { numRuns: 60, seed: 11 })) {
    const worked = workOut(plan)
    look(worked)
    look(fuel(plan, drying(plan, worked.fish.perFiring)))
    look(kilnHeat(plan, worked.tray))
  }
  return [...found].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, one]) => one)
}

describe('figures without a published source', () => {
  // `npx vitest run -u --project core tests/reference/unsourced.test.ts` writes the list anew; the app shows it.
  it('are all listed for the reader', async () => {
    const found = unsourced()
    expect(found.length).toBeGreaterThan(10)
    await expect(`${JSON.stringify(found, null, 2)}\n`).toMatchFileSnapshot(file)
  }, 60_000)
})
