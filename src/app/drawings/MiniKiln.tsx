import { outlineOf } from '../../core/geometry/outline.ts'
import type { Plan } from '../../core/plan/schema.ts'
import { useWords } from '../words/use-words.tsx'
import './ink.css'
import { Fire } from './signs.tsx'

const r = (value: number): string => String(Math.round(value * 100) / 100)

/** Most courses drawn in a small picture: finer ones would close up to a grey. */
const MOST_COURSES = 8

/**
 * The kiln small, from the front, standing on its ground line. Plans in a list share one scale, so that the bigger kiln is the bigger picture.
 * Chambers, openings, height, trays and the size of the unit are the plan's own; the bond is only hinted at.
 */
export function MiniKiln({
  plan,
  unitsPerM,
  isDrawn = true,
}: {
  readonly plan: Plan
  readonly unitsPerM: number
  /** False keeps its place and says what it is, without the lines. */
  readonly isDrawn?: boolean
}) {
  const words = useWords()
  const { outsideLength, chambers } = outlineOf(plan)
  const { unit, aboveM, joint } = plan.walls
  const s = unitsPerM
  const lengthU = outsideLength.value * s
  const wallU = aboveM * s
  const courses = Math.min(MOST_COURSES, Math.max(1, Math.round(aboveM / (unit.heightM + joint.usualM))))
  const courseU = wallU / courses
  const perpendU = Math.max(6, (unit.lengthM + joint.usualM) * s)
  const trays = plan.trays.perChamber
  const trayU = plan.trays.railDepthM * s
  const stackU = trays * trayU + 2
  const topU = stackU + 2
  const frameM = plan.chambers.clearSideM + 2 * (plan.trays.setbackM + plan.trays.railThicknessM)
  const frame = {
    className: 'ink mini-kiln',
    viewBox: `-3 0 ${r(lengthU + 6)} ${r(topU + wallU + 3)}`,
    style: { width: lengthU + 6 },
    role: 'img',
    'aria-label': words.named('drawing.mini-label', { count: plan.chambers.count }),
  }
  if (!isDrawn) return <svg {...frame} />
  let bond = ''
  for (let course = 0; course < courses; course++) {
    const y = topU + wallU - course * courseU
    if (course > 0) bond += `M0 ${r(y)}H${r(lengthU)}`
    for (let x = course % 2 === 0 ? perpendU : perpendU / 2; x < lengthU - 2; x += perpendU)
      bond += `M${r(x)} ${r(y)}v${r(-courseU)}`
  }
  return (
    <svg {...frame}>
      {chambers.map((chamber) => {
        const x0U = ((chamber.x0M + chamber.x1M) / 2 - frameM / 2) * s
        const lines = Array.from(
          { length: trays - 1 },
          (_, index) => `M${r(x0U)} ${r(topU - (index + 1) * trayU)}h${r(frameM * s)}`,
        )
        return (
          <g key={chamber.x0M}>
            <path
              className="k-wood-face"
              d={`M${r(x0U)} ${r(topU - trays * trayU)}h${r(frameM * s)}V${r(topU)}h${r(-frameM * s)}z`}
            />
            <path className="k-thin" d={lines.join('')} />
          </g>
        )
      })}
      <path className="k-unit" d={`M0 ${r(topU)}h${r(lengthU)}v${r(wallU)}H0z`} />
      <path className="k-thin" d={bond} />
      {chambers.map((chamber) => {
        const middleU = ((chamber.x0M + chamber.x1M) / 2) * s
        const widthU = plan.openings.widthM * s
        const highU = Math.min(plan.openings.heightM * s, wallU)
        return (
          <g key={chamber.x0M}>
            <path
              className="k-hollow"
              d={`M${r(middleU - widthU / 2)} ${r(topU + wallU)}v${r(-highU)}h${r(widthU)}v${r(highU)}z`}
            />
            <Fire xU={middleU} yU={topU + wallU - 1} heightU={highU * 0.8} />
          </g>
        )
      })}
    </svg>
  )
}
