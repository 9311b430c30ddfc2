import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Plan } from '../../src/core/plan/schema.ts'
import { repairOrder } from '../../src/core/schedule/repair-order.ts'
import { rememberingMasonry, workOut } from '../../src/core/work-out.ts'
import { examplePlan } from '../core/costs/plans.ts'
import { cases } from './cases.ts'

const base = examplePlan('two-chambers')
const masonry = rememberingMasonry()
type Owned = Plan['trays']['owned'][string]

const owned = fc.oneof(
  fc.record({
    item: fc.constant('rail'),
    lengthM: fc.double({ min: 0.2, max: 5, noNaN: true }),
    widthM: fc.constant(0),
    count: fc.integer({ min: 1, max: 6 }),
  }),
  fc.record({
    item: fc.constant('cover-sheet'),
    lengthM: fc.double({ min: 0.3, max: 2.5, noNaN: true }),
    widthM: fc.double({ min: 0.3, max: 1.3, noNaN: true }),
    count: fc.integer({ min: 1, max: 3 }),
  }),
)
const withOwned = (list: readonly Owned[]): Plan => ({
  ...base,
  trays: { ...base.trays, owned: Object.fromEntries(list.map((one, index) => [`p${String(index)}`, one])) },
})
const cost = (plan: Plan): number => workOut(plan, masonry).costs.subtotal.value

describe('pieces at hand', () => {
  it('never make the list dearer, and no more of one is cut than there is', () => {
    fc.assert(
      fc.property(fc.array(owned, { maxLength: 3 }), owned, (list, more) => {
        expect(cost(withOwned([...list, more]))).toBeLessThanOrEqual(cost(withOwned(list)))
        const { purchase } = workOut(withOwned([...list, more]), masonry)
        const used = [
          ...[...purchase.cutting.values()].flatMap(({ stock }) => stock),
          ...[...purchase.flat.values()].flatMap((flat) => (flat.kind === 'sheets' ? flat.plan.stock : [])),
        ]
        const overused = [...list, more].filter((one, index) =>
          used.some(({ key, count }) => key === `owned p${String(index)}` && count > one.count),
        )
        expect(overused).toEqual([])
      }),
      { numRuns: cases(60) },
    )
  }, 300_000)
})

const repair = fc.record({
  trays: fc.integer({ min: 0, max: 12 }),
  mesh: fc.integer({ min: 0, max: 12 }),
  covers: fc.integer({ min: 0, max: 4 }),
})

describe('a repair', () => {
  const { tray, plan } = workOut(base)
  const paid = (of: Parameters<typeof repairOrder>[2]) => repairOrder(plan, tray, of).cost.value

  it('of more parts never costs less, and two at once never more than one after the other', () => {
    fc.assert(
      fc.property(repair, repair, (one, other) => {
        const both = {
          trays: one.trays + other.trays,
          mesh: one.mesh + other.mesh,
          covers: one.covers + other.covers,
        }
        expect(paid(both)).toBeGreaterThanOrEqual(paid(one))
        expect(paid(both)).toBeLessThanOrEqual(paid(one) + paid(other))
      }),
      { numRuns: cases(60) },
    )
  }, 300_000)

  it('of nothing buys nothing', () => {
    expect(repairOrder(plan, tray, { trays: 0, mesh: 0, covers: 0 }).purchase.lines).toEqual([])
  })

  it('of one tray takes the pieces of one tray', () => {
    const { purchase } = repairOrder(plan, tray, { trays: 1, mesh: 0, covers: 0 })
    const rail = purchase.cutting.get('rail')
    const timberM = tray.pieces.reduce((sum, { perTray, length }) => sum + perTray * length.value, 0)
    expect(rail?.piecesM).toBeCloseTo(timberM, 9)
  })
})
