import { frontRing, levelRing, oblique, rightRing } from './axes.ts'
import { rectangle, type Drawing, type Point, type Shape } from './drawing.ts'
import type { DrawnKiln } from './plan-view.ts'

/** Every this many wires one is drawn, so that the mesh stays a mesh and not a grey. */
const WIRES = 14

/** One tray from above, front at the bottom: through rails run on as handles, cross rails, battens, mesh. */
export function trayView({ plan, tray }: DrawnKiln): Drawing {
  const sideM = tray.side.value
  const railM = tray.rail.thickness.value
  const handleM = plan.trays.handleM
  const lapM = (tray.inner.value - tray.mesh.value) / 2
  const crossM = (sideM - tray.crossRail.value) / 2
  const wires = Array.from({ length: WIRES }, (_, k) => railM + ((k + 1) * tray.inner.value) / (WIRES + 1))
  const battens = Array.from(
    { length: plan.trays.battens },
    (_, k) => railM + ((k + 1) * tray.inner.value) / (plan.trays.battens + 1),
  )
  const shapes: Shape[] = [
    {
      kind: 'lines',
      ink: 'mesh',
      lines: wires.flatMap((atM) => [
        [
          [atM, railM + lapM],
          [atM, sideM - railM - lapM],
        ],
        [
          [railM + lapM, atM],
          [sideM - railM - lapM, atM],
        ],
      ]),
    },
    {
      kind: 'area',
      ink: 'hidden',
      rings: battens.map((atM) => rectangle(railM, atM - railM / 2, sideM - railM, atM + railM / 2)),
    },
    {
      kind: 'area',
      ink: 'wood-face',
      rings: [0, sideM - railM].map((yM) => rectangle(crossM, yM, sideM - crossM, yM + railM)),
    },
    {
      kind: 'area',
      ink: 'wood-face',
      rings: [0, sideM - railM].map((xM) => rectangle(xM, -handleM, xM + railM, sideM + handleM)),
    },
    dimension('x', 0, sideM, { side: 'top', lane: 0 }, tray.side),
    dimension('x', railM, sideM - railM, { atM: 0.72 * sideM }, tray.inner),
    dimension('y', -handleM, sideM + handleM, { side: 'left', lane: 0 }, tray.throughRail),
    dimension('y', sideM, sideM + handleM, { side: 'right', lane: 0 }, handleM),
  ]
  return {
    box: { x0M: -0.02, x1M: sideM + 0.02, y0M: -handleM, y1M: sideM + handleM },
    shapes,
    label: {
      key: 'drawing.tray-label',
      args: {
        side: { lengthM: sideM },
        rail: { lengthM: tray.throughRail.value },
        cross: { lengthM: tray.crossRail.value },
      },
    },
  }
}

type Dimension = Extract<Shape, { kind: 'dimension' }>

const dimension = (
  axis: 'x' | 'y',
  fromM: number,
  toM: number,
  place: Dimension['place'],
  value: Dimension['working'] | number,
): Dimension => ({
  kind: 'dimension',
  axis,
  fromM,
  toM,
  place,
  value: { lengthM: typeof value === 'number' ? value : (value?.value ?? 0) },
  ...(typeof value !== 'number' && value !== undefined && { working: value }),
})

/** Two trays on the front wall in section: how far back from the fire face the rail stands, what of the wall it bears on, the handle over it. */
export function traySeatView({ plan, geometry, tray }: DrawnKiln): Drawing {
  const wallM = geometry.wall.value
  const railM = tray.rail.thickness.value
  const highM = tray.rail.depth.value
  const { setbackM, handleM } = plan.trays
  const outM = setbackM + railM + handleM
  const fireM = 0.1
  const deepM = 0.11
  const cell = plan.walls.unit.cells[0]
  const shapes: Shape[] = [{ kind: 'area', ink: 'masonry', rings: [rectangle(0, -deepM, wallM, 0)] }]
  if (cell !== undefined && plan.walls.leaf === 'single') {
    const fromM = (wallM - cell.widthM) / 2
    shapes.push({
      kind: 'area',
      ink: plan.walls.fill === 'none' ? 'wood-face' : 'fill',
      rings: [rectangle(fromM, -deepM, fromM + cell.widthM, 0)],
    })
  }
  for (const z0M of [0, highM]) {
    shapes.push(
      { kind: 'area', ink: 'wood', rings: [rectangle(setbackM, z0M, setbackM + railM, z0M + highM)] },
      {
        kind: 'area',
        ink: 'wood-face',
        rings: [rectangle(setbackM + railM, z0M + 0.2 * highM, outM, z0M + 0.8 * highM)],
      },
      {
        kind: 'line',
        ink: 'mesh-cut',
        points: [
          [-fireM, z0M + 0.004],
          [setbackM, z0M + 0.004],
        ],
      },
    )
  }
  shapes.push(
    { kind: 'fire', at: [-0.6 * fireM, -deepM], heightM: 0.7 * deepM },
    dimension('x', 0, setbackM, { side: 'top', lane: 0, edgeM: 0 }, setbackM),
    dimension('x', setbackM, setbackM + railM, { side: 'top', lane: 1, edgeM: 2 * highM }, railM),
    dimension('x', setbackM + railM, outM, { side: 'top', lane: 0, edgeM: 2 * highM }, handleM),
    dimension('x', 0, setbackM + railM, { side: 'bottom', lane: 0 }, tray.bearing),
    dimension('x', 0, wallM, { side: 'bottom', lane: 1 }, geometry.wall),
    dimension('y', 0, highM, { atM: -0.35 * fireM }, highM),
  )
  return {
    box: { x0M: -fireM, x1M: Math.max(wallM, outM) + 0.01, y0M: -deepM, y1M: 2 * highM },
    shapes,
    label: {
      key: 'drawing.seat-label',
      args: {
        setback: { lengthM: setbackM },
        rail: { lengthM: railM },
        bearing: { lengthM: tray.bearing.value },
        wall: { lengthM: wallM },
      },
    },
  }
}

/** The corner joint taken apart: through rail in front, cross rail pulled away, with what is cut out of each. */
export function trayCornerView({ plan, tray }: DrawnKiln): Drawing {
  const r = tray.rail.thickness.value
  const h = tray.rail.depth.value
  const l = 4.2 * r
  const gap = 1.6 * r
  const shapes: Shape[] = []
  const block = (x0M: number, x1M: number, y0M: number, y1M: number, z0M: number, z1M: number) =>
    shapes.push(
      { kind: 'area', ink: 'face-shaded', rings: [rightRing(x1M, y0M, y1M, z0M, z1M)] },
      { kind: 'area', ink: 'face', rings: [frontRing(x0M, x1M, y0M, z0M, z1M)] },
      { kind: 'area', ink: 'top', rings: [levelRing(x0M, y0M, x1M, y1M, z1M)] },
    )
  const half = h / 2
  const away = l / 2
  // The through rail runs from front to back at the left, the cross rail to the right of it.
  const crossFrom = r + gap
  switch (plan.trays.corner) {
    case 'butt':
      block(0, r, 0, l, 0, h)
      block(crossFrom, crossFrom + l, away, away + r, 0, h)
      break
    case 'lap':
      block(0, r, 0, l, 0, h)
      // Rebate half a rail deep: seen as a hollow in the inner face.
      shapes.push({ kind: 'area', ink: 'hollow', rings: [rightRing(r, away, away + r, 0, h)] })
      block(crossFrom, crossFrom + l, away, away + r, 0, h)
      break
    case 'half-lap':
      block(0, r, away + r, l, 0, h)
      block(0, r, away, away + r, 0, half)
      block(0, r, 0, away, 0, h)
      block(crossFrom, crossFrom + r, away, away + r, half, h)
      block(crossFrom + r, crossFrom + r + l, away, away + r, 0, h)
      break
    default:
      plan.trays.corner satisfies never
  }
  shapes.push({
    kind: 'area',
    ink: 'hidden',
    rings: [
      [oblique(r, away, h), oblique(crossFrom, away, h)],
      [oblique(r, away, 0), oblique(crossFrom, away, 0)],
    ],
  })
  const pin: Point = oblique(r + gap / 2, away, h)
  shapes.push({
    kind: 'words',
    at: [pin[0], pin[1] + 0.7 * h],
    key: `drawing.corner.${plan.trays.corner}`,
  })
  const far = oblique(crossFrom + r + l, away + r, h)
  const back = oblique(0, l, h)
  const low = oblique(crossFrom + r + l, away, 0)
  return {
    box: {
      x0M: -0.5 * r,
      x1M: far[0] + 0.5 * r,
      y0M: Math.min(0, low[1]) - 0.4 * r,
      y1M: Math.max(back[1], far[1]) + h,
    },
    shapes,
    label: {
      key: `drawing.corner-label.${plan.trays.corner}`,
      args: { thickness: { lengthM: r }, depth: { lengthM: h }, cross: { lengthM: tray.crossRail.value } },
    },
  }
}
