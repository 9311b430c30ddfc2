import type { Peg } from './tape-network.ts'

/** The pegs as drawn: off the plan by `times` as much as they are, so that the eye sees it. */
export interface TapePicture {
  readonly times: number
  readonly pegs: readonly Peg[]
}

/** Exaggerations a reader can be told, largest first. */
const TIMES = [50, 20, 9, 5, 3, 2, 1]
/** The largest move on the drawing stays under this share of the diagonal. */
const SHARE_OF_DIAGONAL = 0.08

/** Where to draw pegs that stand off the plan. One exaggeration for all, chosen so that the worst stays on the sheet. */
export function tapePicture(plan: readonly Peg[], stands: readonly Peg[]): TapePicture {
  const pairs = stands.flatMap((peg) => {
    const want = plan.find(({ id }) => id === peg.id)
    return want === undefined ? [] : [{ peg, want }]
  })
  const diagonal = Math.max(0, ...plan.map(({ xM, yM }) => Math.hypot(xM, yM)))
  const worst = Math.max(0, ...pairs.map(({ peg, want }) => Math.hypot(peg.xM - want.xM, peg.yM - want.yM)))
  const times = TIMES.find((one) => one * worst <= SHARE_OF_DIAGONAL * diagonal) ?? 1
  return {
    times,
    pegs: pairs.map(({ peg, want }) => ({
      id: peg.id,
      xM: want.xM + times * (peg.xM - want.xM),
      yM: want.yM + times * (peg.yM - want.yM),
    })),
  }
}
