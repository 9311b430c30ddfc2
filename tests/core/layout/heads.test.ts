import { describe, expect, it } from 'vitest'
import type { Head } from '../../../src/core/layout/contract.ts'
import { layOut } from '../../../src/core/layout/lay-out.ts'
import { request, UNITS } from './requests.ts'

const laid = (head: Head, over: Partial<Parameters<typeof request>[0]> = {}) =>
  layOut(request({ unit: UNITS.brick215, chambers: 2, head, ...over }))

describe('heads', () => {
  it('a lintel bears as asked on both sides, lies on the bed joint over the head course and fills whole courses', () => {
    const layout = laid({ kind: 'lintel', bearingM: 0.15, courses: 2 }, { chambers: 1 })
    expect(layout.lintels.length).toBe(1)
    for (const lintel of layout.lintels) {
      expect(lintel.bearingLeftM).toBeGreaterThanOrEqual(0.15 - 1e-9)
      expect(lintel.bearingRightM).toBeGreaterThanOrEqual(0.15 - 1e-9)
      const opening = layout.openings[(lintel.chambers[0] ?? 0) - 1]
      expect(opening?.undersideM).toBeCloseTo(lintel.zM, 9)
      expect(lintel.zM).toBeCloseTo((opening?.headM ?? 0) + layout.joints.bedM, 9)
      expect(lintel.dzM).toBeCloseTo(2 * 0.065 + layout.joints.bedM, 9)
    }
  })

  it('lintels that would all but meet over a dividing wall become one', () => {
    const layout = laid({ kind: 'lintel', bearingM: 0.25, courses: 1 }, { clearSideM: 0.7, openingM: 0.5 })
    expect(layout.lintels.map(({ chambers }) => chambers)).toEqual([[1, 2]])
    expect(layout.findings.filter(({ kind }) => kind === 'bearing-short').length).toBe(1)
  })

  it('where no course lies over the head the openings stay open to the top and a finding says so', () => {
    const plan = request({ unit: UNITS.hollow450x150, chambers: 2 })
    const { courses } = plan
    const layout = layOut({ ...plan, courses: { ...courses, headCourses: courses.count } })
    expect(layout.lintels).toEqual([])
    expect(layout.findings[0]).toMatchObject({ kind: 'head-above-wall', neededCourses: 1, availableCourses: 0 })
    expect(layout.openings[0]?.undersideM).toBeCloseTo(courses.aboveM, 9)
  })

  it('a corbel steps no more than half the height and a third of the bed depth, and a unit bridges the rest', () => {
    // Brick Industry Association, Technical Note 36A: corbel limits of 65 mm brick 102.5 mm wide.
    const layout = laid({ kind: 'corbel' }, { headM: 0.2 })
    const corbel = layout.openings[0]?.corbel
    expect(corbel?.stepM).toBeLessThanOrEqual(Math.min(0.065 / 2, 0.1025 / 3) + 1e-9)
    expect(corbel?.bridgedM).toBeLessThanOrEqual(0.215 / 2 + 1e-6)
    const boxes = layout.openings[0]?.boxes ?? []
    boxes.slice(1).forEach((box, i) => {
      expect(((boxes[i]?.dxM ?? 0) - box.dxM) / 2).toBeLessThanOrEqual((corbel?.stepLimitM ?? 0) + 1e-6)
    })
    const top = boxes.at(-1)
    const bridging = layout.units.filter(
      (unit) =>
        unit.wall === 'front' &&
        Math.abs(unit.zM - ((top?.zM ?? 0) + (top?.dzM ?? 0))) < 1e-6 &&
        unit.xM < (top?.xM ?? 0) &&
        unit.xM + unit.dxM > (top?.xM ?? 0) + (top?.dxM ?? 0),
    )
    expect(bridging.length).toBe(1)
  })

  it('a segmental arch of 350 mm span and 35 mm rise has a soffit radius of 455 mm', () => {
    // Geometry: R = (s² ÷ 4 + r²) ÷ 2r = (0.030625 + 0.001225) ÷ 0.07.
    const layout = laid({ kind: 'arch', riseM: 0.035 }, { headM: 0.3 })
    const arch = layout.openings[0]?.arch
    expect(arch?.radiusM).toBeCloseTo(0.455, 9)
    expect(arch?.centreBelowSpringingM).toBeCloseTo(0.42, 9)
    expect((arch?.voussoirs ?? 0) % 2).toBe(1)
    // Joints and bricks fill the soffit: n·h + (n + 1)·j is the arc 2φR, φ = asin(s ÷ 2R).
    const n = arch?.voussoirs ?? 0
    expect(n * 0.065 + (n + 1) * (arch?.jointAtSoffitM ?? 0)).toBeCloseTo(2 * 0.455 * Math.asin(0.175 / 0.455), 9)
    // The empty segment: half the angle less half its sine, times R², by the wall's thickness.
    const angle = 2 * Math.asin(0.175 / 0.455)
    const segment = (0.455 ** 2 / 2) * (angle - Math.sin(angle)) * 0.1025
    const opening = layout.openings[0]
    const box = opening?.boxes[0]
    const rectangle = (box?.dxM ?? 0) * (box?.dyM ?? 0) * (box?.dzM ?? 0)
    expect((opening?.volumeM3 ?? 0) - rectangle).toBeCloseTo(segment, 9)
    expect(layout.counts.archUnits).toBeGreaterThanOrEqual(2 * n)
  })

  it('an arch of blocks is refused with a finding', () => {
    const layout = laid({ kind: 'arch', riseM: 0.05 }, { unit: UNITS.hollow390x190 })
    expect(layout.findings.some(({ kind }) => kind === 'head-needs-brick')).toBe(true)
  })
})

describe('openings', () => {
  it('one to a chamber, in the middle of its front, sill at the highest course boundary at or below the hearth', () => {
    const plan = request({ unit: UNITS.hollow450x150, chambers: 3 })
    const layout = layOut(plan)
    layout.openings.forEach((opening, k) => {
      const middle = 0.15 + k * (0.68 + 0.15) + 0.34
      expect(opening.xM + opening.widthM / 2).toBeCloseTo(middle, 6)
      expect(opening.sillM).toBeLessThanOrEqual(1e-9)
      const gauge = plan.courses.unitHeightM + plan.courses.bedM
      expect(opening.sillM + gauge).toBeGreaterThan(0)
    })
  })
})

describe('corbelled heads over many plans', () => {
  it('either one unit bridges each gap or a finding says so', () => {
    for (const unit of [UNITS.brick215, UNITS.brick190, UNITS.brick230, UNITS.earth290, UNITS.adobe290])
      for (const clearSideM of [0.6, 0.68, 0.8, 1])
        for (const openingM of [0.25, 0.35, 0.45]) {
          const layout = laid({ kind: 'corbel' }, { unit, clearSideM, openingM, headM: 0.2, aboveM: 0.8 })
          for (const { boxes } of layout.openings) {
            const top = boxes.at(-1)
            if (top === undefined || layout.openings[0]?.corbel === null) continue
            const over = top.zM + top.dzM
            const bridged = layout.units.some(
              ({ wall, xM, dxM, zM }) =>
                wall === 'front' && Math.abs(zM - over) < 1e-6 && xM < top.xM && xM + dxM > top.xM + top.dxM,
            )
            const told = layout.findings.some(
              (finding) =>
                finding.kind === 'lap-short' && finding.xM > top.xM - 0.01 && finding.xM < top.xM + top.dxM + 0.01,
            )
            expect(bridged || told).toBe(true)
          }
        }
  })
})
