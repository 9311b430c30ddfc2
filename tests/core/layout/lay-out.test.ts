import { describe, expect, it } from 'vitest'
import { layOut } from '../../../src/core/layout/lay-out.ts'
import { request, UNIT_NAMES, UNITS } from './requests.ts'
import { outsideIn, overlapIn, solidsOf, volumeOf } from './solids.ts'

const BONDS = [
  ['single', 'stretcher'],
  ['one-brick', 'english'],
  ['one-brick', 'header'],
] as const

describe.each(UNIT_NAMES)('every unit in its place: %s', (name) => {
  it.each(BONDS)('%s leaf, %s bond, 1 to 3 chambers', (leaf, bond) => {
    for (const chambers of [1, 2, 3]) {
      const layout = layOut(request({ unit: UNITS[name], chambers, leaf, bond }))
      expect(overlapIn(layout)).toBeNull()
      expect(outsideIn(layout)).toBeNull()
      const solid = solidsOf(layout).reduce((sum, box) => sum + volumeOf(box), 0)
      expect(layout.mortarM3).toBeCloseTo(layout.wallVolumeM3 - solid, 9)
      expect(layout.mortarM3).toBeGreaterThan(0)
      expect(layout.counts.laid).toBe(layout.units.length)
      expect(layout.counts.bought).toBeGreaterThanOrEqual(layout.counts.lowerBound)
    }
  })
})
