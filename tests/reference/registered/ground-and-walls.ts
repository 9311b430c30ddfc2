import { lotsFor } from '../../../src/core/basics/count.ts'
import { PUBLISHED_BEARING } from '../../../src/core/geometry/bearing-tables.ts'
import { stepOverlap } from '../../../src/core/geometry/footing-steps.ts'
import { foundationOf } from '../../../src/core/geometry/foundation.ts'
import { kilnGeometry } from '../../../src/core/geometry/kiln.ts'
import { KEPT_DISTANCES } from '../../../src/core/geometry/neighbours.ts'
import { pitVolume } from '../../../src/core/geometry/pit.ts'
import { adjustTapes, outOfSquareDeg } from '../../../src/core/geometry/tape-check.ts'
import { compassPoint } from '../../../src/core/geometry/wind.ts'
import { trayFrame } from '../../../src/core/fish/tray-frame.ts'
import { gaugeRod } from '../../../src/core/layout/coursing.ts'
import { layOut } from '../../../src/core/layout/lay-out.ts'
import { CATALOGUE_UNITS, soilOf } from '../../../src/core/plan/catalogue.ts'
import { beddedAreaM2 } from '../../../src/core/quantities/hollow-beds.ts'
import { LEVELS, planWith } from '../../core/geometry/plans.ts'
import { request, UNITS } from '../../core/layout/requests.ts'
import type { Worked } from './worked.ts'

const fromGround = { ...LEVELS, belowM: 0 }
const kiln = (count: number) => kilnGeometry(planWith(count, 0.68, 0.16), fromGround)

/** Six tapes of a 4 × 3 m rectangle, each some millimetres off. */
function tapes() {
  const found = adjustTapes(
    [
      { id: 'A', xM: 0, yM: 0 },
      { id: 'B', xM: 4, yM: 0 },
      { id: 'C', xM: 4, yM: 3 },
      { id: 'D', xM: 0, yM: 3 },
    ],
    [
      ['A', 'B', 4.003],
      ['B', 'C', 2.998],
      ['C', 'D', 3.998],
      ['D', 'A', 3.003],
      ['A', 'C', 5.009],
      ['B', 'D', 5.003],
    ].map(([from, to, lengthM]) => ({ from: String(from), to: String(to), lengthM: Number(lengthM) })),
  )
  if (!found.ok) throw new Error('tapes refused')
  return found.value
}

const bearing = (soil: string, from: string): number | undefined =>
  PUBLISHED_BEARING[soil]?.find(({ source }) => source === from)?.bearingPa

const hollowWall = () => {
  const plan = planWith(1, 0.68, 0.16, (change) => {
    change.walls.unit = { ...change.walls.unit, family: 'hollow-block', voidFraction: 0 }
  })
  return foundationOf(plan, kilnGeometry(plan, LEVELS), trayFrame(plan)).pressure.inputs
}

/** The clockwise edge of north, felt out in hundredths of a degree. */
function edgeOfNorthDeg(): number {
  let hundredths = 0
  while (compassPoint(hundredths / 100) === 'N') hundredths += 1
  return hundredths / 100
}

const nineInch = CATALOGUE_UNITS.find(({ key }) => key === 'hollow-450-225-225')
const voidOf = (key: string): number | undefined => CATALOGUE_UNITS.find((unit) => unit.key === key)?.voidFraction

/** Units to the square metre in the middle of a long wall, as laid: from the step of two neighbours and the height with its bed. */
function perSquareMetre(lengthM: number, widthM: number, heightM: number): number | undefined {
  const unit = { lengthM, widthM, heightM, jointM: 0.01, cells: [] }
  const plan = { ...request({ unit, chambers: 1, clearSideM: 2 }), perpend: { minM: 0.01, usualM: 0.01, maxM: 0.01 } }
  const row = layOut(plan)
    .units.filter(({ course, wall, kind }) => course === 1 && wall === 'back' && kind === 'whole')
    .sort((a, b) => a.xM - b.xM)
  const [, first, second] = row
  return first && second && 1 / ((second.xM - first.xM) * (heightM + 0.01))
}

export const GROUND_AND_WALLS: Worked = {
  'wall-plan-area': () => kiln(2).wallPlanArea.value,
  'wall-volume': () => kiln(2).wallVolumeGross.value,
  'diagonal-two': () => kiln(2).diagonal.value,
  'diagonal-one': () => kiln(1).diagonal.value,
  'out-of-square': () => outOfSquareDeg(6, 4, 7.221, 7.201),
  'tape-correction': () => tapes().tapes[0]?.correctionM,
  'tape-diagonal-correction': () => tapes().tapes[4]?.correctionM,
  'tape-corner': () => tapes().pegs[2]?.xM,
  pit: () => pitVolume(4, 3, 6, 5, 1),
  'step-overlap': () => stepOverlap(0.2, 0.2),
  'step-overlap-least': () => stepOverlap(0.1, 0.1),
  'wind-edge': edgeOfNorthDeg,
  'bearing-clay': () => bearing('clay-firm', 'ibc-2012'),
  'bearing-clay-canada': () => bearing('clay-firm', 'canada-housing'),
  'sand-loose': () => soilOf('sand-loose').loose,
  'weight-concrete': () => hollowWall()['y']?.value,
  'weight-hollow': () => hollowWall()['W']?.inputs['w']?.value,
  'distance-house': () => KEPT_DISTANCES.find(({ field }) => field === 'houseM')?.leastM,
  'face-390-190': () => perSquareMetre(0.39, 0.1, 0.19),
  'face-450-225': () => perSquareMetre(0.45, 0.1, 0.225),
  'face-440-215': () => perSquareMetre(0.44, 0.1, 0.215),
  'face-290-90': () => perSquareMetre(0.29, 0.14, 0.09),
  'face-215-65': () => perSquareMetre(0.215, 0.1, 0.065),
  'void-nine-inch': () => nineInch && 1 - beddedAreaM2(nineInch) / (nineInch.lengthM * nineInch.widthM),
  'solid-nine-inch': () => nineInch && beddedAreaM2(nineInch) * nineInch.heightM,
  'void-six-inch': () => voidOf('hollow-390-140-190'),
  'void-eight-inch': () => voidOf('hollow-390-190-190'),
  'gauge-wide': () => gaugeRod(2.15, 28).more,
  'gauge-four': () => gaugeRod(0.3, 4).gaugeMm,
  'ordering-bricks': () => lotsFor(690 * 1.1, 1),
  'pinwheel-450': () => {
    const head = { kind: 'steel' as const, bearingM: 0.15 }
    const { units } = layOut(request({ unit: UNITS.hollow450x150, chambers: 1, clearSideM: 0.77, head }))
    const foot = units.filter(({ course }) => course === 1)
    return foot.every(({ kind }) => kind === 'whole') ? foot.length : Number.NaN
  },
}
