import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { drying } from '../../src/core/fish/drying.ts'
import { fishLoad } from '../../src/core/fish/load.ts'
import { trayFrame } from '../../src/core/fish/tray-frame.ts'
import { conduct } from '../../src/core/heat/conduct.ts'
import { coolingPhase, firingPhases, wallHeat } from '../../src/core/heat/firing-heat.ts'
import { fuel } from '../../src/core/heat/fuel.ts'
import { kilnHeat } from '../../src/core/heat/kiln-heat.ts'
import { transmittance } from '../../src/core/heat/slab.ts'
import { outerWall, separatePaths, sharedWall } from '../../src/core/heat/wall-section.ts'
import type { Plan } from '../../src/core/plan/schema.ts'
import { workingsIn, wrongWorkings } from '../core/fish/check-working.ts'
import { anyPlan } from '../core/fish/plans.ts'
import { cases } from './cases.ts'
import { forAnyPlan } from './for-any-plan.ts'

const FILLINGS = ['none', 'sand', 'clay', 'solid'] as const
const INSIDE_FILM = 20

/** Face of a wall that has been fired for ever: the air plus what the flow lifts it. */
const steadyFace = (plan: Plan, filling: (typeof FILLINGS)[number]) => {
  const wall = outerWall(plan, filling)
  return 30 + (transmittance(wall, INSIDE_FILM) * 150) / wall.outsideFilmWm2K
}

const widened = (plan: Plan, factor: number): Plan => ({
  ...plan,
  walls: {
    ...plan.walls,
    leaf: 'single',
    unit: { ...plan.walls.unit, widthM: plan.walls.unit.widthM * factor },
  },
})

describe('walls', () => {
  it('keep account of heat: in − out = stored to a thousandth, whatever the wall, the stages and the steps', () => {
    fc.assert(
      fc.property(
        anyPlan,
        fc.constantFrom(...FILLINGS),
        fc.integer({ min: 20, max: 3600 }),
        fc.boolean(),
        (plan, filling, stepS, middle) => {
          const wall = middle ? sharedWall(plan, filling) : outerWall(plan, filling)
          const run = conduct(wall, [...firingPhases(plan, 50), ...coolingPhase(plan)], {
            airDegC: 25,
            start: 30,
            stepS,
          })
          const moved = Math.abs(run.inJm2) + Math.abs(run.outJm2)
          expect(Math.abs(run.inJm2 - run.outJm2 - run.storedJm2)).toBeLessThan(1e-3 * moved)
        },
      ),
      { numRuns: cases(60) },
    )
  })

  it('give back no more than they keep', () => {
    fc.assert(
      fc.property(anyPlan, fc.constantFrom(...FILLINGS), (plan, filling) => {
        const { outer } = wallHeat(plan, filling, 50)
        expect(outer.cold.returnedJm2).toBeLessThanOrEqual(outer.cold.storedJm2 + 1)
        // Once settled a firing leaves the wall as it found it: what it stored goes out again before the next.
        expect(outer.repeated.returnedJm2).toBeLessThanOrEqual(outer.repeated.storedJm2 * 1.02 + 1)
      }),
      { numRuns: cases(15) },
    )
  })

  it('are never hotter or colder than what heats and cools them, at any step', () => {
    fc.assert(
      fc.property(anyPlan, fc.integer({ min: 20, max: 900 }), (plan, stepS) => {
        const run = conduct(outerWall(plan, 'sand'), firingPhases(plan, 100), { airDegC: 25, start: 25, stepS })
        const hottest = Math.max(...firingPhases(plan, 100).map((phase) => phase.gasDegC))
        expect(Math.max(...run.temperatures)).toBeLessThanOrEqual(hottest + 1e-6)
        expect(Math.min(...run.temperatures)).toBeGreaterThanOrEqual(25 - 1e-6)
      }),
      { numRuns: cases(40) },
    )
  })

  it('that are thicker are never hotter outside in the steady state', () => {
    fc.assert(
      fc.property(
        anyPlan,
        fc.constantFrom(...FILLINGS),
        fc.double({ min: 1, max: 3, noNaN: true }),
        (plan, filling, factor) => {
          const thin = widened(plan, 1)
          expect(steadyFace(widened(plan, factor), filling)).toBeLessThanOrEqual(steadyFace(thin, filling) + 1e-9)
        },
      ),
    )
  })

  it('that are filled with dry sand are never hotter outside than empty or solid ones in the steady state', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        expect(steadyFace(plan, 'sand')).toBeLessThanOrEqual(steadyFace(plan, 'none') + 1e-9)
        expect(steadyFace(plan, 'sand')).toBeLessThanOrEqual(steadyFace(plan, 'solid') + 1e-9)
      }),
    )
  })

  it('leak more by isothermal planes than by separate paths, and the two bound the truth', () => {
    fc.assert(
      fc.property(anyPlan, fc.constantFrom(...FILLINGS), (plan, filling) => {
        const planes = transmittance(outerWall(plan, filling), INSIDE_FILM)
        const paths = separatePaths(plan, filling).reduce(
          (sum, path) => sum + path.share * transmittance(path.slab, INSIDE_FILM),
          0,
        )
        expect(paths).toBeLessThanOrEqual(planes * (1 + 1e-9))
      }),
    )
  })
})

describe('fish', () => {
  it('dried further never gives more product and never needs less wood', () => {
    fc.assert(
      fc.property(anyPlan, fc.double({ min: 0.2, max: 1, noNaN: true }), (plan, factor) => {
        const drier: Plan = {
          ...plan,
          catch: { ...plan.catch, moistureFinal: Math.max(0.05, plan.catch.moistureFinal * factor) },
        }
        const fresh = fishLoad(plan).freshPerDay
        const [wet, dry] = [drying(plan, fresh), drying(drier, fresh)]
        expect(dry.product.value).toBeLessThanOrEqual(wet.product.value * (1 + 1e-12))
        expect(fuel(drier, dry).byEnergy.low.wood.value).toBeGreaterThanOrEqual(
          fuel(plan, wet).byEnergy.low.wood.value - 1e-9,
        )
      }),
      { numRuns: cases(10) },
    )
  })

  it('explains its wood and heat in formulas that compute them, in units that balance', () => {
    forAnyPlan(3, (plan) => {
      const dried = drying(plan, fishLoad(plan).freshPerDay)
      const all = [dried, fuel(plan, dried), kilnHeat(plan, trayFrame(plan))]
      expect(wrongWorkings(all)).toEqual([])
      expect(workingsIn(all)).toBeGreaterThan(20)
    })
  })
})
