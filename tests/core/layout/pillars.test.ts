import { describe, expect, it } from 'vitest'
import type { LayoutFinding, LayoutRequest } from '../../../src/core/layout/contract.ts'
import { layOut } from '../../../src/core/layout/lay-out.ts'
import { CATALOGUE_UNITS } from '../../../src/core/plan/catalogue.ts'
import { newPlan } from '../../../src/core/plan/defaults.ts'
import { workOut } from '../../../src/core/work-out.ts'
import { request, UNITS } from './requests.ts'

const pillarOf = (plan: LayoutRequest) =>
  layOut(plan).findings.filter(
    (one): one is LayoutFinding & { kind: 'pillar-unbonded' } => one.kind === 'pillar-unbonded',
  )

describe('the pillar between two openings', () => {
  const narrow = request({ unit: UNITS.hollow450x150, chambers: 3, openingM: 0.35 })

  it('480 mm wide in 450 × 150 block bonds in no way, and each says so at its place with a size that does', () => {
    // Geometry: its middle is taken every other course by 150 mm of dividing wall and two joints of 10, so the other course may
    // have a perpend only 112.5 mm (a quarter of 450) beyond 80 mm from the middle and no piece under 112.5: 620 mm at least.
    // One unit spans 450 mm. So the opening must be 0.68 + 0.15 − 0.45 = 0.38 m, or the chamber 0.65 m.
    const found = pillarOf(narrow)
    expect(found.map(({ xM }) => xM)).toEqual(
      [0.15 + 0.68 + 0.075, 0.15 + 2 * 0.68 + 0.15 + 0.075].map((x) => expect.closeTo(x, 9) as number),
    )
    expect(found[0]?.pillarM).toBeCloseTo(0.48, 9)
    expect(found[0]?.mostM).toBeCloseTo(0.45, 9)
    expect(found[0]?.leastM).toBeCloseTo(0.62, 9)
    expect(found[0]?.remedies).toEqual([
      { kind: 'opening-width', widthM: expect.closeTo(0.38, 9) as number },
      { kind: 'clear-side', clearSideM: expect.closeTo(0.65, 9) as number },
    ])
  })

  it('each offered size leaves no such finding, over many sizes and units', () => {
    let offered = 0
    for (const unit of [UNITS.hollow450x150, UNITS.hollow390x140, UNITS.solid450x125])
      for (const clearSideM of [0.6, 0.66, 0.7, 0.78, 0.9])
        for (const openingM of [0.3, 0.36, 0.42, 0.5]) {
          const plan = request({ unit, chambers: 2, clearSideM, openingM })
          for (const remedy of pillarOf(plan)[0]?.remedies ?? []) {
            const mended =
              remedy.kind === 'opening-width'
                ? { ...plan, opening: { ...plan.opening, widthM: remedy.widthM } }
                : { ...plan, clearSideM: remedy.kind === 'clear-side' ? remedy.clearSideM : 0 }
            expect(pillarOf(mended)).toEqual([])
            offered++
          }
        }
    expect(offered).toBeGreaterThan(20)
  })

  it('a new plan of any unit and one to four chambers has none, whatever its opening must be for that', () => {
    for (const { key, lengthM, widthM } of CATALOGUE_UNITS)
      for (const count of [1, 2, 3, 4]) {
        const first = { id: 'x', name: 'x', freshKgPerDay: 60, unitKey: key, soil: 'sand-dense' }
        const plan = newPlan({ ...first, currency: { code: 'XOF', digits: 0 } })
        plan.chambers.count = count
        const { findings } = workOut(plan)
        expect(findings.some(({ kind }) => kind === 'layout.pillar-unbonded')).toBe(false)
        const bondsInMiddle = lengthM / 4 <= (widthM + 0.01) / 2
        const { widthM: openingM } = plan.openings
        expect(bondsInMiddle ? openingM === 0.35 : 0.68 + widthM - openingM <= lengthM + 1e-9).toBe(true)
      }
  })
})

describe('lintels two courses deep', () => {
  it('leave no short lap beside them in brick at the common size: they lie over the corners, and say how tall their end joint is', () => {
    for (const unit of [UNITS.brick215, UNITS.brick190, UNITS.earth290])
      for (const chambers of [1, 2]) {
        const layout = layOut(request({ unit, chambers, head: { kind: 'lintel', bearingM: 0.15, courses: 2 } }))
        expect(layout.findings.filter(({ kind }) => kind !== 'lintel-end')).toEqual([])
        const ends = layout.findings.filter((one) => one.kind === 'lintel-end')
        expect(ends.every(({ deepCourses }) => deepCourses === 2)).toBe(true)
      }
  })
})
