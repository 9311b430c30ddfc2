import type {
  DiagramLine,
  DiagramPoint,
  DiagramRow,
  StepDiagram,
  SettingOutStep,
} from '../../geometry/setting-out-steps.ts'
import { rectangle, type Box, type Drawing, type Ink, type Point, type Shape } from './drawing.ts'
import { trenchCutView } from './trench-cut-view.ts'

/** Half the angle of a swung arc that is drawn, radians. */
const ARC_HALF = 0.22
const ARC_PARTS = 8

const NAME_AT: Readonly<Record<string, 'above-left' | 'above-right' | 'below-left' | 'below-right'>> = {
  A: 'below-left',
  B: 'below-right',
  C: 'above-right',
  D: 'above-left',
}

const at = ({ xM, yM }: DiagramPoint): Point => [xM, yM]

/** One step of pegging out, from above, front at the bottom: pegs driven are solid, the one to drive now is empty, the line to tape now is ember. */
export function settingOutView(step: SettingOutStep): Drawing {
  const { driven, now, arcs, taped, marked, rows, running, cut } = step.diagram
  const label = { key: `drawing.setout.${step.id}`, args: {} }
  if (cut !== null) return { ...trenchCutView(cut), label }
  const box = boxOf(step.diagram)
  const marginM = 0.08 * Math.max(box.x1M - box.x0M, box.y1M - box.y0M)
  const strings = step.diagram.strings.map((line) => within(line, box, marginM))
  const peg = (point: DiagramPoint, isDriven: boolean): Shape => ({
    kind: 'peg',
    at: at(point),
    driven: isDriven,
    ...(point.id.length === 1 && { name: point.id, nameAt: NAME_AT[point.id] ?? 'above-left' }),
  })
  const shapes: Shape[] = [
    ...marked.map(({ x0M, y0M, x1M, y1M }, index): Shape => ({
      kind: 'area',
      ink: inkOf(step.id, index),
      rings: [rectangle(x0M, y0M, x1M, y1M)],
    })),
    { kind: 'lines', ink: 'string', lines: strings.map(({ from, to }) => [at(from), at(to)]) },
    ...arcs.map(({ centre, radiusM }): Shape => {
      const goal = now[0] ?? taped.at(-1)?.to ?? centre
      const middle = Math.atan2(goal.yM - centre.yM, goal.xM - centre.xM)
      const half = Math.min(ARC_HALF, marginM / radiusM)
      return {
        kind: 'line',
        ink: 'hidden',
        points: Array.from({ length: ARC_PARTS + 1 }, (_, k): Point => {
          const angle = middle + half * ((2 * k) / ARC_PARTS - 1)
          return [centre.xM + radiusM * Math.cos(angle), centre.yM + radiusM * Math.sin(angle)]
        }),
      }
    }),
    ...taped.flatMap((line, index) => tapedShapes(line, index, driven)),
    ...rows.flatMap((row) => rowDimensions(row, marked[0])),
    ...(running.length > 0 ? [{ kind: 'running', side: 'bottom', lane: 0, marksM: running } as const] : []),
    ...(step.north === null ? [] : northShapes(step.north, box)),
    ...driven.map((point) => peg(point, true)),
    ...now.map((point) => peg(point, false)),
  ]
  return {
    box: {
      x0M: box.x0M - marginM,
      y0M: box.y0M - marginM,
      x1M: box.x1M + marginM,
      y1M: box.y1M + marginM,
    },
    shapes,
    label,
  }
}

/** What is cleared is a mere limit; of what is marked the outermost line is the heaviest. */
function inkOf(id: SettingOutStep['id'], index: number): Ink {
  if (id === 'clear') return index === 0 ? 'hidden' : 'outline'
  return index === 0 ? 'outline' : 'edge-open'
}

/** A string as far as the drawing shows it. */
function within({ from, to }: DiagramLine, box: Box, marginM: number): DiagramLine {
  const clamped = ({ id, xM, yM }: DiagramPoint): DiagramPoint => ({
    id,
    xM: Math.max(box.x0M - marginM, Math.min(box.x1M + marginM, xM)),
    yM: Math.max(box.y0M - marginM, Math.min(box.y1M + marginM, yM)),
  })
  return { from: clamped(from), to: clamped(to) }
}

/** Lengths between the marks of a row, one dimension each. */
function rowDimensions({ side, marksM }: DiagramRow, outline: StepDiagram['marked'][number] | undefined): Shape[] {
  const edgeM = outline === undefined ? undefined : { top: outline.y1M, bottom: outline.y0M, left: outline.x0M }[side]
  return marksM.slice(1).map((toM, index): Shape => {
    const fromM = marksM[index] ?? toM
    return {
      kind: 'dimension',
      axis: side === 'left' ? 'y' : 'x',
      fromM,
      toM,
      place: { side, lane: 0, ...(edgeM !== undefined && { edgeM }) },
      value: { lengthM: toM - fromM },
    }
  })
}

/** An arrow to true north in the upper half of the drawing. */
function northShapes({ xM, yM }: { readonly xM: number; readonly yM: number }, box: Box): Shape[] {
  const sizeM = 0.12 * (box.x1M - box.x0M)
  const middle: Point = [box.x0M + 0.62 * (box.x1M - box.x0M), box.y1M - sizeM]
  const off = (by: number): Point => [middle[0] + by * sizeM * xM, middle[1] + by * sizeM * yM]
  return [
    { kind: 'arrow', from: off(-0.8), to: off(0.8) },
    { kind: 'words', at: off(1.35), key: 'drawing.north' },
  ]
}

/** A line to tape, with its length along it; figures stand off the crossing of two lines, and off a peg that stands in the middle of one. */
function tapedShapes(
  { from, to, lengthM }: DiagramLine & { readonly lengthM: number },
  index: number,
  driven: readonly DiagramPoint[],
): Shape[] {
  const share = index % 2 === 0 ? 0.34 : 0.66
  const [a, b] = from.xM <= to.xM ? [from, to] : [to, from]
  const slantDeg = (Math.atan2(b.yM - a.yM, b.xM - a.xM) * 180) / Math.PI
  const isSlanting = Math.abs(a.xM - b.xM) > 1e-6 && Math.abs(a.yM - b.yM) > 1e-6
  const isInTheWay = driven.some(
    ({ xM, yM }) => yM === a.yM && b.yM === a.yM && Math.abs(xM - (a.xM + b.xM) / 2) < 0.2 * lengthM,
  )
  const along = isSlanting ? share : isInTheWay ? 0.25 : 0.5
  return [
    { kind: 'line', ink: 'diagonal', points: [at(from), at(to)] },
    {
      kind: 'text',
      at: [a.xM + along * (b.xM - a.xM), a.yM + along * (b.yM - a.yM)],
      text: { lengthM },
      size: 'big',
      ember: true,
      ...(Math.abs(slantDeg) > 80 ? { turned: true as const } : isSlanting ? { slantDeg } : {}),
    },
  ]
}

function boxOf({ driven, now, strings, taped, marked }: StepDiagram): Box {
  // What is to be marked is shown as large as it can be, and the strings as far as they reach into it.
  const lines = marked.length > 0 ? taped : [...strings, ...taped]
  const points = [
    ...driven,
    ...now,
    ...lines.flatMap(({ from, to }) => [from, to]),
    ...marked.flatMap(({ x0M, y0M, x1M, y1M }) => [
      { xM: x0M, yM: y0M },
      { xM: x1M, yM: y1M },
    ]),
  ]
  const xs = points.map(({ xM }) => xM)
  const ys = points.map(({ yM }) => yM)
  const [x0M, x1M] = [Math.min(...xs), Math.max(...xs)]
  const [y0M, y1M] = [Math.min(...ys), Math.max(...ys)]
  // A single string still wants ground before and behind it.
  const least = 0.3 * (x1M - x0M)
  const short = Math.max(0, least - (y1M - y0M)) / 2
  return { x0M, x1M, y0M: y0M - short, y1M: y1M + short }
}
