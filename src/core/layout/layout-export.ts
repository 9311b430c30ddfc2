import type { Box, JointRange, Layout, LayoutRequest, PlacedUnit } from './contract.ts'

/** A layout in plain JSON, metres, so that any outside judge can check it. */
export interface LayoutExport {
  readonly format: 'placed-units'
  readonly lengthUnit: 'm'
  readonly axes: string
  readonly joints: { readonly bedM: number; readonly perpend: JointRange }
  readonly lapM: number
  readonly walls: readonly (Box & { readonly wall: string })[]
  readonly openings: readonly (Box & { readonly chamber: number })[]
  readonly lintels: readonly (Box & { readonly kind: string })[]
  readonly units: readonly (Box & Pick<PlacedUnit, 'id' | 'course' | 'wall' | 'turn' | 'kind' | 'cutLengthM'>)[]
}

const boxOf = ({ xM, yM, zM, dxM, dyM, dzM }: Box): Box => ({ xM, yM, zM, dxM, dyM, dzM })

/** The placed units as plain data, m, for other programs. */
export const layoutExport = (request: LayoutRequest, layout: Layout): LayoutExport => ({
  format: 'placed-units',
  lengthUnit: 'm',
  axes: 'x along the front from its left outside corner, y to the back, z up from the ground; boxes by low corner and size',
  joints: { bedM: layout.joints.bedM, perpend: request.perpend },
  lapM: layout.trace.lapNeededM,
  walls: layout.walls.map((wall) => ({ ...boxOf(wall), wall: wall.wall })),
  openings: layout.openings.flatMap(({ boxes, chamber }) => boxes.map((box) => ({ ...boxOf(box), chamber }))),
  lintels: layout.lintels.map((lintel) => ({ ...boxOf(lintel), kind: lintel.kind })),
  units: layout.units.map((unit) => ({
    ...boxOf(unit),
    id: unit.id,
    course: unit.course,
    wall: unit.wall,
    turn: unit.turn,
    kind: unit.kind,
    cutLengthM: unit.cutLengthM,
  })),
})
