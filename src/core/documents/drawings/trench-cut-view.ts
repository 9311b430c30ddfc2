import type { TrenchCut } from '../../geometry/setting-out-steps.ts'
import { rectangle, type Shape } from './drawing.ts'

/** Ground on either side of the trench, and earth under its bottom, m. */
const BESIDE_M = 0.3
const UNDER_M = 0.12
const PEG_M = 0.03

/** A cut through the trench: how deep to dig, and level pegs whose tops are the top of the concrete. */
export function trenchCutView({ widthM, depthM, pegsM }: TrenchCut) {
  const topM = pegsM - depthM
  const peg = (xM: number): Shape => ({
    kind: 'area',
    ink: 'wood-face',
    rings: [rectangle(xM - PEG_M / 2, -depthM - UNDER_M * 0.8, xM + PEG_M / 2, topM)],
  })
  const shapes: Shape[] = [
    {
      kind: 'area',
      ink: 'earth',
      rings: [
        [
          [-BESIDE_M, 0],
          [0, 0],
          [0, -depthM],
          [widthM, -depthM],
          [widthM, 0],
          [widthM + BESIDE_M, 0],
          [widthM + BESIDE_M, -depthM - UNDER_M],
          [-BESIDE_M, -depthM - UNDER_M],
        ],
      ],
    },
    {
      kind: 'line',
      ink: 'outline',
      points: [
        [-BESIDE_M, 0],
        [0, 0],
        [0, -depthM],
        [widthM, -depthM],
        [widthM, 0],
        [widthM + BESIDE_M, 0],
      ],
    },
    {
      kind: 'line',
      ink: 'hidden',
      points: [
        [0, topM],
        [widthM, topM],
      ],
    },
    peg(0.25 * widthM),
    peg(0.75 * widthM),
    {
      kind: 'dimension',
      axis: 'y',
      fromM: -depthM,
      toM: 0,
      place: { side: 'left', lane: 0, edgeM: -BESIDE_M },
      value: { lengthM: depthM },
    },
    {
      kind: 'dimension',
      axis: 'y',
      fromM: -depthM,
      toM: topM,
      place: { atM: widthM / 2 },
      value: { lengthM: pegsM },
    },
    {
      kind: 'dimension',
      axis: 'x',
      fromM: 0,
      toM: widthM,
      place: { side: 'top', lane: 0, edgeM: 0 },
      value: { lengthM: widthM },
    },
  ]
  return { box: { x0M: -BESIDE_M, y0M: -depthM - UNDER_M, x1M: widthM + BESIDE_M, y1M: 0.04 }, shapes }
}
