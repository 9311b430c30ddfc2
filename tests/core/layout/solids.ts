import type { Box, Layout } from '../../../src/core/layout/contract.ts'

export const volumeOf = ({ dxM, dyM, dzM }: Box): number => dxM * dyM * dzM

const shared = (a: Box, b: Box): number => {
  const dx = Math.min(a.xM + a.dxM, b.xM + b.dxM) - Math.max(a.xM, b.xM)
  const dy = Math.min(a.yM + a.dyM, b.yM + b.dyM) - Math.max(a.yM, b.yM)
  const dz = Math.min(a.zM + a.dzM, b.zM + b.dzM) - Math.max(a.zM, b.zM)
  return Math.min(dx, dy, dz)
}

const TOUCH_M = 1e-7

/** Everything solid: units, lintels, and openings, none of which may share space. */
export const solidsOf = (layout: Layout): Box[] => [
  ...layout.units,
  ...layout.lintels.filter(({ dzM }) => dzM > 0),
  ...layout.openings.flatMap(({ boxes }) => boxes),
]

/** The first two solids that share space, or null. Swept along x. */
export function overlapIn(layout: Layout): readonly [Box, Box] | null {
  const sorted = solidsOf(layout).sort((a, b) => a.xM - b.xM)
  for (const [i, a] of sorted.entries())
    for (let k = i + 1; k < sorted.length; k++) {
      const b = sorted[k]
      if (b === undefined || b.xM > a.xM + a.dxM) break
      if (shared(a, b) > TOUCH_M) return [a, b]
    }
  return null
}

/** The first unit or lintel that does not lie wholly in the walls, by volume shared with each wall's box. */
export function outsideIn(layout: Layout): Box | null {
  for (const solid of solidsOf(layout)) {
    let inside = 0
    for (const wall of layout.walls) {
      const dx = Math.min(solid.xM + solid.dxM, wall.xM + wall.dxM) - Math.max(solid.xM, wall.xM)
      const dy = Math.min(solid.yM + solid.dyM, wall.yM + wall.dyM) - Math.max(solid.yM, wall.yM)
      const dz = Math.min(solid.zM + solid.dzM, wall.zM + wall.dzM) - Math.max(solid.zM, wall.zM)
      if (dx > 0 && dy > 0 && dz > 0) inside += dx * dy * dz
    }
    if (Math.abs(inside - volumeOf(solid)) > 1e-9) return solid
  }
  return null
}
