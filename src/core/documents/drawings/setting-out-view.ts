import type { DiagramLine, DiagramPoint, StepDiagram, SettingOutStep } from '../../geometry/setting-out-steps.ts'
import { rectangle, type Drawing, type Point, type Shape } from './drawing.ts'

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
  const { driven, now, strings, arcs, taped, marked } = step.diagram
  const box = boxOf(step.diagram)
  const marginM = 0.08 * Math.max(box.x1M - box.x0M, box.y1M - box.y0M)
  const peg = (point: DiagramPoint, isDriven: boolean): Shape => ({
    kind: 'peg',
    at: at(point),
    driven: isDriven,
    ...(point.id.length === 1 && { name: point.id, nameAt: NAME_AT[point.id] ?? 'above-left' }),
  })
  const shapes: Shape[] = [
    ...marked.map(({ x0M, y0M, x1M, y1M }, index): Shape => ({
      kind: 'area',
      ink: index === 0 ? 'outline' : 'edge-open',
      rings: [rectangle(x0M, y0M, x1M, y1M)],
    })),
    { kind: 'lines', ink: 'string', lines: strings.map(({ from, to }) => [at(from), at(to)]) },
    ...arcs.map(({ centre, radiusM }): Shape => {
      const goal = now[0] ?? taped.at(-1)?.to ?? centre
      const middle = Math.atan2(goal.yM - centre.yM, goal.xM - centre.xM)
      return {
        kind: 'line',
        ink: 'hidden',
        points: Array.from({ length: ARC_PARTS + 1 }, (_, k): Point => {
          const angle = middle + ARC_HALF * ((2 * k) / ARC_PARTS - 1)
          return [centre.xM + radiusM * Math.cos(angle), centre.yM + radiusM * Math.sin(angle)]
        }),
      }
    }),
    ...taped.flatMap((line, index) => tapedShapes(line, index)),
    ...(step.id === 'clear' ? outlineDimensions(marked[0]) : []),
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
    label: { key: `drawing.setout.${step.id}`, args: {} },
  }
}

function outlineDimensions(outline: StepDiagram['marked'][number] | undefined): Shape[] {
  if (outline === undefined) return []
  const { x0M, x1M, y0M, y1M } = outline
  return [
    {
      kind: 'dimension',
      axis: 'x',
      fromM: x0M,
      toM: x1M,
      place: { side: 'bottom', lane: 0 },
      value: { lengthM: x1M - x0M },
    },
    {
      kind: 'dimension',
      axis: 'y',
      fromM: y0M,
      toM: y1M,
      place: { side: 'left', lane: 0 },
      value: { lengthM: y1M - y0M },
    },
  ]
}

/** A line to tape, with its length along it; figures of crossing lines stand off the crossing. */
function tapedShapes({ from, to, lengthM }: DiagramLine & { readonly lengthM: number }, index: number): Shape[] {
  const share = index % 2 === 0 ? 0.34 : 0.66
  const [a, b] = from.xM <= to.xM ? [from, to] : [to, from]
  const slantDeg = (Math.atan2(b.yM - a.yM, b.xM - a.xM) * 180) / Math.PI
  const isSlanting = Math.abs(a.xM - b.xM) > 1e-6 && Math.abs(a.yM - b.yM) > 1e-6
  const along = isSlanting ? share : 0.5
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

function boxOf({ driven, now, strings, taped, marked }: StepDiagram) {
  const points = [
    ...driven,
    ...now,
    ...[...strings, ...taped].flatMap(({ from, to }) => [from, to]),
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
