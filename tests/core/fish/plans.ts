import * as fc from 'fast-check'
import { CATALOGUE_FORMS, CATALOGUE_UNITS } from '../../../src/core/plan/catalogue.ts'
import { newPlan, wallsFor } from '../../../src/core/plan/defaults.ts'
import type { Plan } from '../../../src/core/plan/schema.ts'

/** A plan from the three answers, two chambers of hollow block. */
export const plainPlan = (freshKgPerDay = 60): Plan =>
  newPlan({
    id: 'test',
    name: 'Test',
    freshKgPerDay,
    unitKey: 'hollow-450-150-225',
    soil: 'sand-dense',
    currency: { code: 'XOF', digits: 0 },
  })

/** Plans all over the limits of what fish, trays and walls may be. */
export const anyPlan: fc.Arbitrary<Plan> = fc
  .record({
    fresh: fc.double({ min: 1, max: 5000, noNaN: true }),
    firings: fc.integer({ min: 1, max: 4 }),
    packed: fc.boolean(),
    perM2: fc.double({ min: 1, max: 30, noNaN: true }),
    perTray: fc.double({ min: 1, max: 40, noNaN: true }),
    loss: fc.double({ min: 0, max: 0.7, noNaN: true }),
    moisture: fc.double({ min: 0.71, max: 0.9, noNaN: true }),
    final: fc.double({ min: 0.05, max: 0.7, noNaN: true }),
    count: fc.integer({ min: 1, max: 8 }),
    side: fc.double({ min: 0.4, max: 2, noNaN: true }),
    unit: fc.constantFrom(...CATALOGUE_UNITS),
    brick: fc.boolean(),
    filled: fc.constantFrom('none' as const, 'sand' as const, 'clay' as const),
    lining: fc.constantFrom(0, 0.02, 0.05, 0.1),
    render: fc.constantFrom(0, 0.015, 0.05),
    trays: fc.integer({ min: 1, max: 15 }),
    rail: fc.double({ min: 0.01, max: 0.08, noNaN: true }),
    depth: fc.double({ min: 0.02, max: 0.12, noNaN: true }),
    setback: fc.double({ min: 0, max: 0.2, noNaN: true }),
    handle: fc.double({ min: 0, max: 0.4, noNaN: true }),
    gap: fc.double({ min: 0, max: 0.2, noNaN: true }),
    corner: fc.constantFrom('butt' as const, 'lap' as const, 'half-lap' as const),
    battens: fc.integer({ min: 0, max: 6 }),
    form: fc.constantFrom(...CATALOGUE_FORMS),
  })
  .map((some) => {
    const plan = plainPlan(some.fresh)
    return {
      ...plan,
      catch: {
        ...plan.catch,
        form: some.form.key,
        firingsPerDay: some.firings,
        loading: some.packed ? ('packed' as const) : ('single-layer' as const),
        loadKgPerM2: some.perM2,
        loadKgPerTray: some.perTray,
        dressingLoss: some.loss,
        moistureFresh: some.moisture,
        moistureFinal: some.final,
      },
      chambers: { count: some.count, clearSideM: some.side },
      walls: {
        ...plan.walls,
        ...wallsFor(some.unit),
        leaf: some.brick ? ('one-brick' as const) : ('single' as const),
        fill: some.unit.cells.length > 0 ? some.filled : ('none' as const),
        liningM: some.lining,
        renderM: some.render,
      },
      trays: {
        ...plan.trays,
        perChamber: some.trays,
        railThicknessM: some.rail,
        railDepthM: some.depth,
        setbackM: some.setback,
        handleM: some.handle,
        gapM: some.gap,
        corner: some.corner,
        battens: some.battens,
      },
    }
  })
