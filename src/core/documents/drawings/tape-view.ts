import { wholeDown } from '../../basics/count.ts'
import type { CheckedLevel } from '../../geometry/level-check.ts'
import type { TapeAdjustment } from '../../geometry/tape-check.ts'
import type { Peg } from '../../geometry/tape-network.ts'
import type { TapeToTake } from '../../geometry/tape-plan.ts'
import type { Drawing, Point, Shape } from './drawing.ts'

/** The largest error is drawn as this share of the diagonal. */
const SEEN_SHARE = 0.09
const MOST_TIMES = 40

type Adjusted = Pick<TapeAdjustment, 'pegs' | 'tapes' | 'moves' | 'suspicious' | 'outOfSquareDeg'>

/** How many times the errors are drawn too large, so that they can be seen. */
export function drawnTimes(plan: readonly Peg[], pegs: readonly Peg[]): number {
  const worstM = Math.max(...plan.map((want) => distance(want, pegs.find(({ id }) => id === want.id) ?? want)))
  const spanM = Math.max(...plan.map(({ xM, yM }) => Math.hypot(xM, yM)))
  return worstM < 5e-4 ? 1 : Math.max(1, Math.min(MOST_TIMES, wholeDown((SEEN_SHARE * spanM) / worstM)))
}

const distance = (one: Peg, other: Peg) => Math.hypot(one.xM - other.xM, one.yM - other.yM)

/**
 * The pegs as taped, over the pegs as planned: errors drawn so many times too large that they can be seen, every reading beside its tape, and an
 * ember arrow with its length where a peg must move. Before anything is typed, the plan with the lengths to find.
 */
export function tapeView(plan: readonly Peg[], tapes: readonly TapeToTake[], adjusted: Adjusted | null): Drawing {
  const pegs = adjusted?.pegs ?? plan
  const times = drawnTimes(plan, pegs)
  const drawn = (id: string): Point => {
    const want = plan.find((peg) => peg.id === id)
    const stands = pegs.find((peg) => peg.id === id) ?? want
    if (want === undefined || stands === undefined) return [0, 0]
    return [want.xM + times * (stands.xM - want.xM), want.yM + times * (stands.yM - want.yM)]
  }
  const planned = (id: string): Point => {
    const want = plan.find((peg) => peg.id === id)
    return [want?.xM ?? 0, want?.yM ?? 0]
  }
  const ring = ['A', 'B', 'C', 'D']
  const read = adjusted?.tapes ?? []
  const shownPegs = plan.filter(
    ({ id }) => adjusted === null || isCorner(id) || read.some(({ from, to }) => from === id || to === id),
  )
  const bays = (plan.length - ring.length) / 2 + 1
  const shapes: Shape[] = [
    { kind: 'area', ink: 'hidden', rings: [ring.map(planned)] },
    { kind: 'area', ink: 'outline', rings: [ring.map(drawn)] },
  ]
  // Bays have tapes of their own: only those that were read, so that the figures have room.
  const shown = tapes.filter(
    ({ from, to, kind }) => kind !== 'bay' || read.some((one) => one.from === from && one.to === to),
  )
  for (const [index, { from, to, kind, planM }] of shown.entries()) {
    const reading = read.find((one) => (one.from === from && one.to === to) || (one.from === to && one.to === from))
    const { suspicious } = adjusted ?? { suspicious: null }
    const isSuspicious = suspicious !== null && suspicious.from === from && suspicious.to === to
    const [a, b] = [drawn(from), drawn(to)].toSorted((one, other) => one[0] - other[0]) as [Point, Point]
    const slantDeg = (Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI
    const along = kind === 'diagonal' ? (index % 2 === 0 ? 0.3 : 0.7) : Math.abs(slantDeg) < 70 ? 0.5 / bays : 0.5
    if (kind === 'diagonal' || isSuspicious)
      shapes.push({
        kind: 'line',
        ink: isSuspicious ? 'diagonal' : index % 2 === 0 ? 'string' : 'string-2',
        points: [a, b],
      })
    const isUpright = Math.abs(slantDeg) > 70
    shapes.push({
      kind: 'text',
      at: [a[0] + along * (b[0] - a[0]), a[1] + along * (b[1] - a[1])],
      text: { lengthM: reading?.lengthM ?? planM },
      ...(isSuspicious && { ember: true }),
      ...(kind === 'side' &&
        !isUpright && { beside: from === 'A' || from === 'B' ? ('bottom' as const) : ('top' as const) }),
      ...(isUpright ? { turned: true as const } : { slantDeg }),
    })
  }
  for (const { peg, along, across } of adjusted?.moves ?? []) {
    if (along === null && across === null) continue
    const from = drawn(peg)
    const to = planned(peg)
    const byM = Math.hypot(along?.byM ?? 0, across?.byM ?? 0)
    shapes.push(
      { kind: 'arrow', from, to, ember: true },
      {
        kind: 'text',
        at: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2],
        text: { lengthM: byM, alone: true },
        ember: true,
        beside: to[1] > from[1] || peg === 'A' || peg === 'B' ? 'top' : 'bottom',
        anchor: peg === 'C' || peg === 'B' ? 'end' : 'start',
      },
    )
  }
  for (const { id } of shownPegs)
    shapes.push({ kind: 'peg', at: drawn(id), driven: true, name: id, nameAt: nameAt(id) })
  const points = plan.flatMap(({ id }) => [drawn(id), planned(id)])
  const xs = points.map(([xM]) => xM)
  const ys = points.map(([, yM]) => yM)
  const spanM = Math.max(...xs) - Math.min(...xs)
  if (times > 1)
    shapes.push({
      kind: 'words',
      at: [(Math.min(...xs) + Math.max(...xs)) / 2, 0],
      key: 'drawing.tape-times',
      args: { times },
      lane: { side: 'bottom', lane: 0 },
    })
  return {
    box: {
      x0M: Math.min(...xs) - 0.09 * spanM,
      x1M: Math.max(...xs) + 0.09 * spanM,
      y0M: Math.min(...ys) - 0.08 * spanM,
      y1M: Math.max(...ys) + 0.1 * spanM,
    },
    shapes,
    label: {
      key: adjusted === null ? 'drawing.tape-plan-label' : 'drawing.tape-label',
      args: {
        count: (adjusted?.moves ?? []).filter(({ along, across }) => along !== null || across !== null).length,
      },
    },
  }
}

const isCorner = (id: string): id is keyof typeof NAME_AT => id in NAME_AT
/** Pegs of a dividing wall stand in front (F) and behind (K). */
const nameAt = (id: string) => (isCorner(id) ? NAME_AT[id] : id.startsWith('F') ? 'below-right' : 'above-right')
const NAME_AT = { A: 'below-left', B: 'below-right', C: 'above-right', D: 'above-left' } as const

/** Height of the columns of a level check on the drawing, as a share of the kiln's length, where its depth has room for two. */
const COLUMN_SHARE = 0.28

/** How low each corner of the footing is under the highest: a column at each peg, its lack of height drawn solid, with its figure. */
export function levelsView(plan: readonly Peg[], corners: readonly CheckedLevel[]): Drawing {
  const lengthM = Math.max(...plan.map(({ xM }) => xM))
  const depthM = Math.max(...plan.map(({ yM }) => yM))
  const ring = ['A', 'B', 'C', 'D'].flatMap((id) => plan.filter((peg) => peg.id === id))
  const worstM = Math.max(...corners.map(({ lowByM }) => lowByM), 1e-3)
  const highM = Math.min(COLUMN_SHARE * lengthM, 0.4 * depthM)
  const thickM = 0.05 * lengthM
  const shapes: Shape[] = [
    { kind: 'area', ink: 'outline', rings: [ring.map(({ xM, yM }): Point => [xM, yM])] },
    ...corners.flatMap(({ peg, lowByM }): Shape[] => {
      const at = plan.find(({ id }) => id === peg)
      if (at === undefined) return []
      const sinkM = (highM * lowByM) / worstM
      const x0M = at.xM === 0 ? thickM : at.xM - 2 * thickM
      const y0M = at.yM === 0 ? thickM / 2 : at.yM - highM - thickM / 2
      const column = (fromM: number, toM: number): readonly Point[] => [
        [x0M, y0M + fromM],
        [x0M + thickM, y0M + fromM],
        [x0M + thickM, y0M + toM],
        [x0M, y0M + toM],
      ]
      return [
        { kind: 'area', ink: 'wood-face', rings: [column(0, highM)] },
        { kind: 'area', ink: 'wood', rings: lowByM < 5e-4 ? [] : [column(highM - sinkM, highM)] },
        {
          kind: 'text',
          at: [at.xM === 0 ? x0M + 1.4 * thickM : x0M - 0.4 * thickM, y0M + highM / 2],
          text: { lengthM: lowByM, alone: true },
          anchor: at.xM === 0 ? 'start' : 'end',
        },
      ]
    }),
    ...ring.map(({ id, xM, yM }): Shape => ({
      kind: 'peg',
      at: [xM, yM],
      name: id,
      driven: true,
      ...(isCorner(id) && { nameAt: NAME_AT[id] }),
    })),
  ]
  return {
    box: { x0M: -0.09 * lengthM, x1M: lengthM + 0.03 * lengthM, y0M: -0.02 * lengthM, y1M: depthM + 0.09 * lengthM },
    shapes,
    label: { key: 'drawing.levels-label', args: { worst: { lengthM: worstM, alone: true } } },
  }
}
