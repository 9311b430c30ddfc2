import type { Finding } from '../../basics/finding.ts'
import type { TrayFrame } from '../../fish/tray-frame.ts'
import type { KilnGeometry } from '../../geometry/kiln.ts'
import type { Site } from '../../geometry/site.ts'
import { compassPoint } from '../../geometry/wind.ts'
import type { Plan } from '../../plan/schema.ts'
import { rectangle, type Drawing, type Point, type Shape } from './drawing.ts'

/** What drawings of the whole kiln are made from. */
export interface DrawnKiln {
  readonly site?: Site
  readonly plan: Plan
  readonly geometry: KilnGeometry
  readonly tray: TrayFrame
}

/** Outline of the masonry at the height of the fire openings: one line that goes in at each opening and round its chamber. */
function cutMasonry({ outside, chambers, openings }: KilnGeometry): Point[] {
  const ring: Point[] = [[outside.x0M, outside.y0M]]
  for (const [index, chamber] of chambers.entries()) {
    const opening = openings[index]
    if (opening === undefined) continue
    ring.push(
      [opening.x0M, outside.y0M],
      [opening.x0M, chamber.y0M],
      [chamber.x0M, chamber.y0M],
      [chamber.x0M, chamber.y1M],
      [chamber.x1M, chamber.y1M],
      [chamber.x1M, chamber.y0M],
      [opening.x1M, chamber.y0M],
      [opening.x1M, outside.y0M],
    )
  }
  ring.push([outside.x1M, outside.y0M], [outside.x1M, outside.y1M], [outside.x0M, outside.y1M])
  return ring
}

/** Up to so many, a chamber is wide enough on a phone to carry its own figure. */
const FEW_CHAMBERS = 4

/** Plan at the height of the openings, front at the bottom: walls cut, trench as a hidden line, what a tape must find. */
export function planView(kiln: DrawnKiln, flags: readonly Finding[]): Drawing {
  const { geometry } = kiln
  const { outside, chambers, openings, footing, clearSide, outsideLength, outsideDepth } = geometry
  const trench = footing.shape.outline
  const crowded = chambers.length > FEW_CHAMBERS
  const shapes: Shape[] = [
    { kind: 'area', ink: 'hidden', rings: [rectangle(trench.x0M, trench.y0M, trench.x1M, trench.y1M)] },
    { kind: 'area', ink: 'masonry', rings: [cutMasonry(geometry)] },
  ]
  for (const opening of openings) {
    for (const yM of [opening.y0M, opening.y1M]) {
      const points: Point[] = [
        [opening.x0M, yM],
        [opening.x1M, yM],
      ]
      shapes.push({ kind: 'line', ink: 'hidden', points })
    }
  }
  for (const chamber of chambers) {
    const sideM = chamber.x1M - chamber.x0M
    const middleM = (chamber.x0M + chamber.x1M) / 2
    shapes.push(
      { kind: 'fire', at: [middleM, chamber.y0M + 0.3 * sideM], heightM: 0.26 * sideM },
      {
        kind: 'dimension',
        axis: 'x',
        fromM: chamber.x0M,
        toM: chamber.x1M,
        place: crowded ? { side: 'top', lane: 0, edgeM: outside.y1M } : { atM: chamber.y0M + 0.74 * sideM },
        value: { lengthM: sideM },
        working: clearSide,
      },
    )
  }
  for (const opening of openings) {
    shapes.push({
      kind: 'dimension',
      axis: 'x',
      fromM: opening.x0M,
      toM: opening.x1M,
      place: { side: 'bottom', lane: 0, edgeM: outside.y0M },
      value: { lengthM: opening.x1M - opening.x0M },
    })
  }
  const front = geometry.tapeRuns.find((run) => run.side === 'front')
  shapes.push(
    {
      kind: 'dimension',
      axis: 'x',
      fromM: outside.x0M,
      toM: outside.x1M,
      place: { side: 'top', lane: crowded ? 1 : 0, edgeM: outside.y1M },
      value: { lengthM: outsideLength.value },
      working: outsideLength,
    },
    {
      kind: 'dimension',
      axis: 'y',
      fromM: outside.y0M,
      toM: outside.y1M,
      place: { side: 'left', lane: 0, edgeM: outside.x0M },
      value: { lengthM: outsideDepth.value },
      working: outsideDepth,
    },
    {
      kind: 'running',
      side: 'bottom',
      lane: 1,
      marksM: (front?.marks ?? [])
        .filter((mark) => mark.kind !== 'opening-start' && mark.kind !== 'opening-end')
        .map((mark) => mark.at.value),
    },
    {
      kind: 'words',
      at: [(outside.x0M + outside.x1M) / 2, 0],
      key: 'drawing.front',
      lane: { side: 'bottom', lane: 2 },
    },
    ...windShapes(kiln),
    ...flagShapes(flags, ({ xM, yM }) => [xM, yM]),
  )
  return {
    box: trench,
    shapes,
    label: {
      key: 'drawing.plan-label',
      args: {
        length: { lengthM: outsideLength.value },
        depth: { lengthM: outsideDepth.value },
        count: chambers.length,
        side: { lengthM: clearSide.value },
      },
    },
  }
}

/** The day's wind as an arrow beside the model and in words, where both it and the facing are known. */
function windShapes({ plan, geometry, site }: DrawnKiln): readonly Shape[] {
  const windDeg = plan.place.windDayDeg ?? plan.place.windNightDeg
  const front = site?.facing.front ?? null
  if (windDeg === null || front === null) return []
  const middleM = geometry.outsideLength.value / 2
  // The front looks down the paper, so a wind from where it looks blows up the paper.
  return [
    { kind: 'wind', xM: middleM, lane: { side: 'bottom', lane: 3 }, towardDeg: windDeg - front.value },
    {
      kind: 'words',
      at: [middleM, 0],
      key: 'drawing.wind',
      args: { from: `wind.${compassPoint(windDeg)}` },
      lane: { side: 'bottom', lane: 4 },
    },
  ]
}

/** Flags of the findings that have a place, with the numbers they have in the list. */
export const flagShapes = (
  findings: readonly Finding[],
  project: (at: NonNullable<Finding['at']>) => Point,
): readonly Shape[] =>
  findings.flatMap(({ at, level }, index) =>
    at === undefined || level === 'good' ? [] : [{ kind: 'flag' as const, at: project(at), level, number: index + 1 }],
  )
