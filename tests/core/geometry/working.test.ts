import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { kilnGeometry } from '../../../src/core/geometry/kiln.ts'
import { settingOut } from '../../../src/core/geometry/setting-out.ts'
import { siteOf } from '../../../src/core/geometry/site.ts'
import { trayFrame } from '../../../src/core/fish/tray-frame.ts'
import { derivedIn, dimensionOf, evaluated, formulaDimension, sameDimension } from '../../laws/formula.ts'
import { LEVELS, planWith } from './plans.ts'

const folder = path.resolve(import.meta.dirname, '../../../src/app/words/en')
const words = new Set(
  readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .flatMap((name) =>
      Object.keys(JSON.parse(readFileSync(path.join(folder, name), 'utf8')) as Record<string, string>),
    ),
)

/** Sites that reach every branch: level and tilted, strip and pad, one level and steps, roofed, each way of facing, one-brick walls. */
const sites = [
  planWith(1, 0.68, 0.16),
  planWith(2, 0.68, 0.15, (plan) => {
    Object.assign(plan.ground, { hearthM: 0.05, apronM: 0.6, hardcoreM: 0.1, footing: 'pad', soil: 'clay-soft' })
    Object.assign(plan.place, { windDayDeg: 200, shelter: 'open-roof', facing: 'lee', declinationDeg: 4 })
  }),
  planWith(3, 0.9, 0.15, (plan) => {
    Object.assign(plan.ground, {
      slopeAcross: -0.06,
      slopeBack: 0.04,
      formation: 'stepped',
      thicknessM: 0.25,
      hearthM: 0.05,
      apronM: 0.05,
    })
    Object.assign(plan.place, { facing: 'own', frontDeg: 310 })
    plan.walls.leaf = 'one-brick'
  }),
  planWith(8, 1, 0.14, (plan) => {
    Object.assign(plan.ground, { slopeAcross: 0.1, slopeBack: -0.1, soil: 'sand-loose' })
    plan.place.windNightDeg = 12
  }),
]

describe.each(sites.map((plan, index) => [index, plan] as const))('working of site %s', (_, plan) => {
  const geometry = kilnGeometry(plan, LEVELS)
  const site = siteOf(plan, geometry, trayFrame(plan))
  const all = derivedIn({ geometry, site, out: settingOut(geometry, site.facing, plan.place.declinationDeg) })

  it('every number has its words, and every formula gives its value in its unit', () => {
    expect(all.length).toBeGreaterThan(40)
    expect(all.filter(({ id }) => !words.has(`working.${id}`)).map(({ id }) => id)).toEqual([])
    const formulas = all.filter((each) => each.formula !== undefined && each.addends !== true)
    const wrong = formulas.filter(
      (one) => !(Math.abs(evaluated(one) - one.value) <= 1e-9 * Math.abs(one.value) + 1e-12),
    )
    const unbalanced = formulas.filter((one) => {
      const unit = formulaDimension(one.formula ?? '', one.inputs)
      return unit !== 'zero' && !sameDimension(unit, dimensionOf(one.unit))
    })
    expect([...wrong, ...unbalanced].map(({ id, formula }) => `${id}: ${formula ?? ''}`)).toEqual([])
  })
})
