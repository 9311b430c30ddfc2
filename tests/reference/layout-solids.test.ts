import Module from 'manifold-3d'
import { beforeAll, describe, expect, it } from 'vitest'
import { layOut } from '../../src/core/layout/lay-out.ts'
import { request, UNITS } from '../core/layout/requests.ts'
import { volumeOf } from '../core/layout/solids.ts'

/**
 * The same volumes from a general solid-geometry library (Manifold): the union of all units has the volume of their sum, so
 * none overlap, and walls less openings, lintels and units leave the mortar. Single precision, so to a millionth.
 */
describe('volumes by a solid-geometry library', () => {
  let solid: Awaited<ReturnType<typeof Module>>
  beforeAll(async () => {
    solid = await Module()
    solid.setup()
  })

  it.each([
    ['hollow 450 × 150, two chambers', { unit: UNITS.hollow450x150, chambers: 2 }],
    ['square earth block, one chamber', { unit: UNITS.earth240, chambers: 1 }],
    ['one-brick English bond', { unit: UNITS.brick230, chambers: 2, leaf: 'one-brick', bond: 'english' }],
    ['corbelled head', { unit: UNITS.brick215, chambers: 1, head: { kind: 'corbel' }, headM: 0.2 }],
  ] as const)('%s', (_, wish) => {
    const layout = layOut(request(wish))
    const box = ({
      xM,
      yM,
      zM,
      dxM,
      dyM,
      dzM,
    }: {
      xM: number
      yM: number
      zM: number
      dxM: number
      dyM: number
      dzM: number
    }) => solid.Manifold.cube([dxM, dyM, dzM]).translate([xM, yM, zM])
    const union = (boxes: readonly Parameters<typeof box>[0][]) => solid.Manifold.union(boxes.map(box))
    const units = union(layout.units)
    const summed = layout.units.reduce((sum, unit) => sum + volumeOf(unit), 0)
    expect(units.volume()).toBeCloseTo(summed, 5)
    const rest = union(layout.walls)
      .subtract(union(layout.openings.flatMap(({ boxes }) => boxes)))
      .subtract(units)
    const carried = layout.lintels.filter(({ dzM }) => dzM > 0)
    const mortar = carried.length === 0 ? rest : rest.subtract(union(carried))
    expect(mortar.volume()).toBeCloseTo(layout.mortarM3, 5)
  })
})
