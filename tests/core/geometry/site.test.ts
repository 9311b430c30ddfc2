import { readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import type { Finding } from '../../../src/core/basics/finding.ts'
import { kilnGeometry } from '../../../src/core/geometry/kiln.ts'
import { siteOf } from '../../../src/core/geometry/site.ts'
import { trayFrame } from '../../../src/core/fish/tray-frame.ts'
import type { Plan } from '../../../src/core/plan/schema.ts'
import { LEVELS, planWith } from './plans.ts'

const words = JSON.parse(
  readFileSync(path.resolve(import.meta.dirname, '../../../src/app/words/en/ground-findings.json'), 'utf8'),
) as Record<string, string>

const site = (change: (plan: Plan) => void, levels = LEVELS) => {
  const plan = planWith(2, 0.68, 0.15, change)
  return siteOf(plan, kilnGeometry(plan, levels), trayFrame(plan))
}

const found = (change: (plan: Plan) => void, kind: string, levels = LEVELS): Finding | undefined => {
  const finding = site(change, levels).findings.find((one) => one.kind === kind)
  if (finding !== undefined) {
    const keys = [`finding.${finding.kind}`, ...finding.remedies.map((one) => `remedy.${one.kind}`)]
    expect(keys.filter((key) => words[key] === undefined)).toEqual([])
  }
  return finding
}

/** A remedy applied as the app would: dotted paths set on a copy. */
const mended = (change: (plan: Plan) => void, kind: string, levels = LEVELS): Finding | undefined => {
  const remedy = found(change, kind, levels)?.remedies[0]
  if (remedy === undefined) throw new Error('no remedy')
  return found(
    (plan) => {
      change(plan)
      for (const [dotted, value] of Object.entries(remedy.set)) {
        const [room, field] = dotted.split('.') as ['ground', keyof Plan['ground']]
        Object.assign(plan[room], { [field]: value })
      }
    },
    kind,
    levels,
  )
}

describe('findings of the ground', () => {
  it('the common footing on dense sand holds', () => {
    expect(found(() => undefined, 'ground.footing-holds')?.level).toBe('good')
  })
  it('soil that nobody should build on, and soil that this version does not know', () => {
    expect(found((plan) => (plan.ground.soil = 'not-to-build'), 'ground.not-to-build')?.level).toBe('problem')
    expect(found((plan) => (plan.ground.soil = 'moon'), 'ground.soil-unknown')?.level).toBe('problem')
  })
  it('a narrow footing under a heavy wall on soft clay is widened by its remedy', () => {
    const heavy = (plan: Plan) => {
      plan.ground.soil = 'clay-soft'
      plan.ground.projectionM = 0
      plan.walls.unit = { ...plan.walls.unit, family: 'solid-block' }
    }
    const levels = { ...LEVELS, aboveM: 1.5 }
    expect(found(heavy, 'ground.footing-narrow', levels)?.level).toBe('problem')
    expect(mended(heavy, 'ground.footing-narrow', levels)).toBeUndefined()
  })
  it('a footing that projects more than it is thick is thickened by its remedy', () => {
    const thin = (plan: Plan) => (plan.ground.projectionM = 0.2)
    expect(found(thin, 'ground.footing-thin')?.level).toBe('problem')
    expect(mended(thin, 'ground.footing-thin')).toBeUndefined()
  })
  it('ground steeper than one in four is to be terraced first', () => {
    const sloped = (across: number, back: number) => (plan: Plan) =>
      void Object.assign(plan.ground, { slopeAcross: across, slopeBack: back })
    expect(found(sloped(0.25, 0), 'ground.terrace-first')).toBeUndefined()
    expect(found(sloped(0.2, 0.2), 'ground.terrace-first')?.level).toBe('problem')
  })
  it('steps lower than one block course are refused, and the remedy mends it', () => {
    const stepped = (plan: Plan) => void Object.assign(plan.ground, { slopeAcross: -0.1, formation: 'stepped' })
    expect(found(stepped, 'ground.steps-course-thicker-than-footing')?.level).toBe('caution')
    expect(mended(stepped, 'ground.steps-course-thicker-than-footing')).toBeUndefined()
    expect(
      found((plan) => {
        stepped(plan)
        plan.ground.footing = 'pad'
      }, 'ground.steps-pad')?.level,
    ).toBe('caution')
  })
  it('the hearth stands 0.3 m clear of a flood (IRC R322.2)', () => {
    expect(found((plan) => (plan.ground.floodM = -0.3), 'ground.below-flood')).toBeUndefined()
    expect(found((plan) => (plan.ground.floodM = -0.1), 'ground.below-flood')?.args['raise']).toEqual({
      value: expect.closeTo(0.2, 9) as number,
      unit: 'm',
    })
  })
  it('water in the trench, rain toward the kiln, a hearth slab thicker than the wall is deep', () => {
    expect(found((plan) => (plan.ground.waterTableM = 0.25), 'ground.trench-floods')?.level).toBe('problem')
    expect(found((plan) => (plan.ground.waterTableM = 0.35), 'ground.trench-floods')).toBeUndefined()
    // IRC R401.3: 5 % over the first 3 m is 150 mm.
    expect(found((plan) => (plan.ground.rain = 'toward'), 'ground.rain-toward')?.args['fall']).toEqual({
      value: expect.closeTo(0.15, 9) as number,
      unit: 'm',
    })
    expect(mended((plan) => (plan.ground.hearthM = 0.3), 'ground.hearth-over-footing')).toBeUndefined()
  })
  it('loose sand is leaned back', () => {
    expect(found((plan) => (plan.ground.soil = 'sand-loose'), 'ground.sides-slump')?.level).toBe('caution')
  })
})

describe('findings of the place', () => {
  it('thatch under 8 m and a house under 3 m are problems, with how much is missing', () => {
    expect(found((plan) => (plan.place.thatchM = 5), 'place.near-thatch')?.args['short']).toEqual({
      value: 3,
      unit: 'm',
    })
    expect(found((plan) => (plan.place.thatchM = 8), 'place.near-thatch')).toBeUndefined()
    expect(found((plan) => (plan.place.houseM = 2), 'place.near-house')?.level).toBe('problem')
    for (const field of ['boundaryM', 'fuelStoreM', 'treesM'] as const)
      expect(found((plan) => (plan.place[field] = 1), `place.near-${field.slice(0, -1)}`)).toBeDefined()
  })
  it('a house down the wind gets the smoke, one up the wind does not', () => {
    const house = (deg: number) => (plan: Plan) =>
      void Object.assign(plan.place, { windDayDeg: 180, houseM: 20, houseDeg: deg })
    expect(found(house(10), 'place.smoke-to-house-day')?.level).toBe('caution')
    expect(found(house(190), 'place.smoke-to-house-day')).toBeUndefined()
  })
  it('a night wind from behind is told, and a front in the lee can be turned', () => {
    const winds = (plan: Plan) => void Object.assign(plan.place, { windDayDeg: 200, windNightDeg: 20 })
    expect(found(winds, 'place.wind-behind-night')?.level).toBe('caution')
    expect(
      mended((plan) => {
        winds(plan)
        plan.place.facing = 'lee'
      }, 'place.facing-lee'),
    ).toBeUndefined()
    expect(found(() => undefined, 'place.facing-unknown')).toBeDefined()
  })
})

describe('shelter', () => {
  const roofed = (plan: Plan) =>
    void Object.assign(plan.place, { shelter: 'open-roof', shelterHeadroomM: 2.2, shelterOverhangM: 0.9 })
  it('is none until asked for', () => {
    expect(site(() => undefined).shelter).toBeNull()
  })
  it('over two chambers of 0.68 m: 3.61 × 2.78 m of roof, posts, rafters and sheets counted by hand', () => {
    // Kiln 2·0.68 + 3·0.15 = 1.81 by 0.68 + 2·0.15 = 0.98, overhang 0.9 each side. Slope length 2.78·√1.04 = 2.835.
    const shelter = site(roofed).shelter
    expect(shelter?.roofLength.value).toBeCloseTo(3.61, 9)
    expect(shelter?.roofDepth.value).toBeCloseTo(2.78, 9)
    const counts = shelter?.timbers.map(({ kind, count }) => [kind, count.value])
    // Posts every 2.4 m: 3 in a row. Rafters every 1.2 m: 5. Purlins every 0.9 m up 2.835 m: 5.
    expect(counts).toEqual([
      ['post', 3],
      ['post', 3],
      ['beam', 2],
      ['rafter', 5],
      ['purlin', 5],
    ])
    // Sheets of 2.4 m lapping 0.15 m: 2 down the slope; 0.75 m cover: 5 across.
    expect(shelter?.sheets.value).toBe(10)
    expect(shelter?.highSide.value).toBeCloseTo(2.2 + 0.2 * 2.78, 9)
  })
  it('too low over the stack is raised by its remedy', () => {
    const low = (plan: Plan) => {
      roofed(plan)
      plan.trays.perChamber = 15
      plan.place.shelterHeadroomM = 1.9
    }
    expect(found(low, 'place.shelter-low')?.level).toBe('caution')
    expect(mended(low, 'place.shelter-low')).toBeUndefined()
  })
})
