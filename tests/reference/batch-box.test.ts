import { describe, expect, it } from 'vitest'
import type { Plan } from '../../src/core/plan/schema.ts'
import { batchBox, batchesFor, mixedUses, unitsPerBatch } from '../../src/core/quantities/batch-box.ts'
import { workOut } from '../../src/core/work-out.ts'
import { examplePlan } from '../core/costs/plans.ts'

const base = examplePlan('one-chamber')
const withBatch = (batch: Partial<Plan['built']['batch']>, mixes: Partial<Plan['mixes']> = {}): Plan => ({
  ...base,
  mixes: { ...base.mixes, ...mixes },
  built: { ...base.built, batch: { ...base.built.batch, ...batch } },
})
const nominal = { cement: 1, sand: 2, stone: 4, dryFactor: 1.54 }

describe('the swelling of damp sand', () => {
  const swelling = (dampM: number, settledM: number) =>
    batchBox(withBatch({ dampM, settledM }), 'concrete').bulking.value

  // Field settling test: sand 200 mm high in the tin, settled to 160 mm under water, has swollen by 25 %.
  it('200 mm that settle to 160 mm are 25 %', () => {
    expect(swelling(0.2, 0.16)).toBeCloseTo(0.25, 12)
  })

  it('is nothing for sand that does not settle, or was measured wrongly', () => {
    expect(swelling(0.2, 0.2)).toBe(0)
    expect(swelling(0.16, 0.2)).toBe(0)
  })
})

describe('a batch of a bag', () => {
  const parts = (plan: Plan) =>
    Object.fromEntries(batchBox(plan, 'concrete').parts.map(({ part, volume }) => [part, volume.value]))

  // Worked examples of the dry-volume method: a 50 kg bag is 0.03472 m³ of loose cement (five figures given), so 1:2:4 takes 0.06944 m³ of sand
  // and 0.13889 m³ of stone to the bag.
  it('1:2:4 takes 0.03472, 0.06944 and 0.13889 m³', () => {
    const { cement, sand, stone } = parts(withBatch({}, { concrete: nominal }))
    expect(cement).toBeCloseTo(0.03472, 5)
    expect(sand).toBeCloseTo(0.06944, 5)
    expect(stone).toBeCloseTo(0.13889, 5)
  })

  // The same examples: 1 m³ of 1:2:4 at a factor of 1.54 takes 316.8 kg of cement, so a bag comes to 50 / 316.8 m³.
  it('comes to 50 / 316.8 m³ of concrete', () => {
    expect(batchBox(withBatch({}, { concrete: nominal }), 'concrete').yield.value).toBeCloseTo(50 / 316.8, 9)
  })

  // 1 m³ of mortar 1:6 at 1.33 takes 273.6 kg of cement and 1.14 m³ of sand (worked examples of the dry-volume method).
  it('1:6 mortar comes to 50 / 273.6 m³, with 1.14 / 273.6 · 50 m³ of sand', () => {
    const batch = batchBox(withBatch({}, { mortar: { cement: 1, clay: 0, sand: 6, dryFactor: 1.33 } }), 'mortar')
    expect(batch.yield.value).toBeCloseTo(50 / 273.6, 9)
    expect(batch.parts.find(({ part }) => part === 'sand')?.volume.value).toBeCloseTo((1.14 / 273.6) * 50, 9)
  })

  // Settling test above: sand that has swollen by 25 % fills a quarter more pans, stone and cement none.
  it('takes a quarter more of sand that has swollen by a quarter, and comes to no more', () => {
    const dry = batchBox(withBatch({}, { concrete: nominal }), 'concrete')
    const damp = batchBox(withBatch({ settledM: 0.16 }, { concrete: nominal }), 'concrete')
    const ratios = damp.parts.map(({ volume }, index) => volume.value / (dry.parts[index]?.volume.value ?? NaN))
    expect(ratios.map((ratio) => Math.round(ratio * 1e9) / 1e9)).toEqual([1, 1.25, 1])
    expect(damp.yield.value).toBe(dry.yield.value)
  })

  it('is measured in what the site has: pans of 20 litres, and whole to a quarter', () => {
    const plan = withBatch({ measure: 'pan' }, { concrete: nominal })
    const sand = batchBox({ ...plan, ground: { ...plan.ground, panM3: 0.02 } }, 'concrete').parts[1]
    // 69.44 litres of sand in pans of 20 are 3.47: three and a half.
    expect(sand?.measures.value).toBeCloseTo(3.472, 3)
    expect(sand?.filled).toBe(3.5)
  })

  it('doubles with two bags and halves with half a bag', () => {
    const yieldOf = (bags: Plan['built']['batch']['bags']) => batchBox(withBatch({ bags }), 'concrete').yield.value
    expect(yieldOf(2)).toBeCloseTo(2 * yieldOf(1), 12)
    expect(yieldOf(0.5)).toBeCloseTo(yieldOf(1) / 2, 12)
  })

  // Where clay alone binds, its water cannot be told by the bag.
  it('begins with one measure of clay where no cement binds', () => {
    const plan = withBatch({ measure: 'barrow' }, { mortar: { cement: 0, clay: 1, sand: 2, dryFactor: 1.33 } })
    const batch = batchBox({ ...plan, ground: { ...plan.ground, barrowM3: 0.06 } }, 'mortar')
    expect(batch.bags).toBeNull()
    expect(batch.water).toBeNull()
    expect(batch.parts.map(({ part, volume }) => [part, volume.value])).toEqual([
      ['clay', 0.06],
      ['sand', 0.12],
    ])
  })
})

describe('batches for the list', () => {
  it('are enough for its cement, and one fewer is not', () => {
    for (const name of ['one-chamber', 'two-chambers', 'three-chambers'] as const) {
      const { plan, needs } = workOut(examplePlan(name))
      const uses = mixedUses(needs)
      expect(uses.length).toBeGreaterThan(1)
      for (const { use, mix } of uses) {
        const batch = batchBox(plan, mix)
        const count = batchesFor(batch, needs, use)?.value ?? NaN
        const wanted = needs.find((need) => need.use === use && need.item === (batch.bags === null ? 'clay' : 'cement'))
        const each = batch.bags === null ? (batch.parts[0]?.volume.value ?? NaN) : batch.bags * 50
        expect(count * each).toBeGreaterThanOrEqual((wanted?.gross.value ?? NaN) - 1e-6)
        expect((count - 1) * each).toBeLessThan(wanted?.gross.value ?? NaN)
      }
    }
  })

  it('lay all units of the walls between them', () => {
    const { plan, needs } = workOut(examplePlan('two-chambers'))
    const units = needs.find(({ item }) => item === 'wall-unit')
    const batch = batchBox(plan, 'mortar')
    if (units === undefined) throw new Error('walls have units')
    const each = unitsPerBatch(batch, needs, units.net)?.value ?? NaN
    const count = batchesFor(batch, needs, 'joints')?.value ?? NaN
    expect((each + 1) * count).toBeGreaterThan(units.net.value)
    expect(each * (count - 1)).toBeLessThan(units.net.value)
  })
})
