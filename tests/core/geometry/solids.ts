import loadManifold, { type Manifold } from 'manifold-3d'
import type { GroundPlane } from '../../../src/core/geometry/ground-plane.ts'
import type { Rect, Shape } from '../../../src/core/geometry/shape.ts'

const wasm = await loadManifold()
wasm.setup()

/** A general solid-geometry library stands in for the spade: boxes, cuts by planes, unions. Only tests use it. */
export const box = ({ x0M, x1M, y0M, y1M }: Rect, z0M: number, z1M: number): Manifold =>
  wasm.Manifold.cube([x1M - x0M, y1M - y0M, z1M - z0M]).translate([x0M, y0M, z0M])

export const prism = ({ outline, holes }: Shape, z0M: number, z1M: number): Manifold =>
  holes.reduce((solid, hole) => solid.subtract(box(hole, z0M - 1, z1M + 1)), box(outline, z0M, z1M))

export const union = (parts: readonly Manifold[]): Manifold => wasm.Manifold.union([...parts])

/** What of a solid lies under the tilted ground. */
export function underGround(solid: Manifold, { across, back }: GroundPlane): Manifold {
  const length = Math.hypot(across, back, 1)
  return solid.trimByPlane([across / length, back / length, -1 / length], 0)
}

/** What of a solid stands over the tilted ground. */
export function overGround(solid: Manifold, { across, back }: GroundPlane): Manifold {
  const length = Math.hypot(across, back, 1)
  return solid.trimByPlane([-across / length, -back / length, 1 / length], 0)
}
