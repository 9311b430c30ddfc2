import { groundAt } from '../../geometry/ground-plane.ts'
import { extraCoursesAt, type KilnGeometry } from '../../geometry/kiln.ts'
import { rectangle, type Shape } from './drawing.ts'

/** How far past the footing the ground is drawn, and how thick its hatching, m. */
const PAST_M = 0.18
const HATCH_M = 0.07

/** Ground and footing where a section from front to back saws through them, `throughM` from the left end. */
export interface SectionGround {
  readonly lowestM: number
  readonly shapes: readonly Shape[]
  readonly line: readonly Shape[]
  /** Whether a course stands in the front or the back wall here: extra courses only where the footing is that much lower. */
  readonly stands: (course: number, wall: 'front' | 'back') => boolean
}

/** Ground, trench and footing cut through the depth of the kiln at a place along the front, m. */
export function sectionGround(geometry: KilnGeometry, throughM: number): SectionGround {
  const { footing, ground, levels } = geometry
  const depthM = geometry.outsideDepth.value
  const wallM = geometry.wall.value
  const projectionM = footing.projection.value
  const thicknessM = footing.thickness.value
  const stepUnder = extraCoursesAt(geometry)
  const middleYM = { front: wallM / 2, back: depthM - wallM / 2 }
  const topUnder = (wall: 'front' | 'back') =>
    -levels.belowM + stepUnder(throughM, middleYM[wall]) * footing.gauge.value
  const strips = [
    { fromM: -projectionM, toM: wallM + projectionM, topM: topUnder('front') },
    { fromM: depthM - wallM - projectionM, toM: depthM + projectionM, topM: topUnder('back') },
  ]
  const pad = [{ fromM: -projectionM, toM: depthM + projectionM, topM: topUnder('front') }]
  const beds = footing.kind === 'pad' ? pad : strips
  const groundM = (yM: number) => groundAt(ground, throughM, yM)
  const sides = [
    [-projectionM - PAST_M, 0],
    [depthM, depthM + projectionM + PAST_M],
  ] as const
  return {
    lowestM: Math.min(...beds.map(({ topM }) => topM - thicknessM), ...sides.flat().map((yM) => groundM(yM) - HATCH_M)),
    shapes: [
      ...sides.map(([fromM, toM]): Shape => ({
        kind: 'area',
        ink: 'earth',
        rings: [
          [
            [fromM, groundM(fromM) - HATCH_M],
            [toM, groundM(toM) - HATCH_M],
            [toM, groundM(toM)],
            [fromM, groundM(fromM)],
          ],
        ],
      })),
      {
        kind: 'area',
        ink: 'concrete',
        rings: beds.map(({ fromM, toM, topM }) => rectangle(fromM, topM - thicknessM, toM, topM)),
      },
    ],
    line: sides.map(([fromM, toM]): Shape => ({
      kind: 'line',
      ink: 'ground',
      points: [
        [fromM, groundM(fromM)],
        [toM, groundM(toM)],
      ],
    })),
    stands: (course, wall) => course > stepUnder(throughM, middleYM[wall]),
  }
}
