import { describe, expect, it } from 'vitest'
import type { Layout } from '../../../src/core/layout/contract.ts'
import { layOut } from '../../../src/core/layout/lay-out.ts'
import { request, UNITS } from './requests.ts'

/** Upright joints of each course on one outer face, from the placed boxes and lintels alone. */
function jointsOnFace({ units, lintels, courses, lengthM, depthM }: Layout, face: 'front' | 'back' | 'left' | 'right') {
  const alongX = face === 'front' || face === 'back'
  const isOnFace = ({ xM, yM, dxM, dyM }: { xM: number; yM: number; dxM: number; dyM: number }): boolean =>
    Math.abs({ front: yM, back: depthM - yM - dyM, left: xM, right: lengthM - xM - dxM }[face]) < 1e-6
  return courses.map(({ index, zBottomM, zTopM }) => {
    const middleM = (zBottomM + zTopM) / 2
    const across = lintels.filter(({ zM, dzM }) => zM < middleM && zM + dzM > middleM)
    const seen = [...units.filter(({ course }) => course === index), ...across]
      .filter(isOnFace)
      .map(({ xM, yM, dxM, dyM }) => (alongX ? [xM, xM + dxM] : [yM, yM + dyM]) as [number, number])
      .toSorted(([one], [other]) => one - other)
    return seen.flatMap(([from], at) => {
      const before = seen[at - 1]?.[1] ?? 0
      return at > 0 && from - before < 0.05 ? [(from + before) / 2] : []
    })
  })
}

describe('English bond in clear sides that are no whole number of bricks', () => {
  // Geometry: a stretcher of s and the header over it shortened by the same r keep every lap at (w + j) ÷ 2, since each perpend
  // beyond moves by r in both courses. So a room has a lawful bond wherever r can be parted into cuts that a header bears.
  for (const clearSideM of [0.68, 0.7, 0.77, 0.8, 0.95, 1])
    for (const chambers of [1, 2, 8])
      it(`${chambers} of ${clearSideM} m in 190 × 90 × 90 brick have laps of a quarter brick everywhere, seen from outside`, () => {
        const plan = request({ unit: UNITS.brick190, leaf: 'one-brick', bond: 'english', clearSideM, chambers })
        const layout = layOut(plan)
        for (const face of ['front', 'back', 'left', 'right'] as const)
          jointsOnFace(layout, face).forEach((joints, course, all) => {
            expect(joints.length).toBeGreaterThan(0)
            for (const joint of joints)
              for (const below of all[course - 1] ?? [])
                expect(Math.abs(joint - below)).toBeGreaterThan(0.19 / 4 - 1e-5)
          })
        expect(layout.findings).toEqual([])
      })

  it('ends a lintel on a joint of the bond below it, no shorter than asked', () => {
    const plan = request({ unit: UNITS.brick190, leaf: 'one-brick', bond: 'english', clearSideM: 0.7, chambers: 1 })
    const layout = layOut(plan)
    for (const { bearingLeftM, bearingRightM } of layout.lintels) {
      expect(bearingLeftM).toBeGreaterThanOrEqual(0.15 - 1e-9)
      expect(bearingRightM).toBeGreaterThanOrEqual(0.15 - 1e-9)
    }
  })
})
