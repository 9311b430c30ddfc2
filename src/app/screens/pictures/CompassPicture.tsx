import type { Plan } from '../../../core/plan/schema.ts'
import './pictures.css'

const MIDDLE = 100

/** A point so far from the middle toward a true bearing, north up. */
function at(deg: number, far: number): string {
  const turn = (deg * Math.PI) / 180
  return `${(MIDDLE + far * Math.sin(turn)).toFixed(1)} ${(MIDDLE - far * Math.cos(turn)).toFixed(1)}`
}

/** An arrow that flies from one distance to another along a bearing. */
function arrow(deg: number, from: number, to: number): string {
  const back = to + 9 * Math.sign(from - to)
  return `M${at(deg, from)}L${at(deg, to)}M${at(deg + 7, back)}L${at(deg, to)}L${at(deg - 7, back)}`
}

/** The kiln from above, north up: where it looks, the winds that come to it (by day solid, by night dashed), the nearest house. */
export function CompassPicture({
  place,
  frontDeg,
  label,
}: {
  readonly place: Plan['place']
  readonly frontDeg: number | null
  readonly label: string
}) {
  const { windDayDeg, windNightDeg, houseDeg } = place
  return (
    <svg className="ink compass" viewBox="0 0 200 200" role="img" aria-label={label}>
      <circle className="k-extension" cx={MIDDLE} cy={MIDDLE} r="82" />
      <path
        className="k-thin"
        d={[0, 45, 90, 135, 180, 225, 270, 315].map((deg) => `M${at(deg, 78)}L${at(deg, 86)}`).join('')}
      />
      <text className="halo" x={MIDDLE} y="12" textAnchor="middle">
        N
      </text>
      <g transform={`rotate(${String((frontDeg ?? 180) - 180)} ${String(MIDDLE)} ${String(MIDDLE)})`}>
        <path className={frontDeg === null ? 'k-hidden' : 'k-masonry'} d="M74 82h52v36H74z" />
        {frontDeg !== null && <path className="k-hollow" d="M92 108h16v11H92z" />}
      </g>
      {windDayDeg !== null && <path className="k-outline" d={arrow(windDayDeg, 76, 40)} />}
      {windNightDeg !== null && (
        <path className="k-string-2" d={arrow(windNightDeg + (windNightDeg === windDayDeg ? 8 : 0), 76, 40)} />
      )}
      {houseDeg !== null && (
        <path className="k-edge" transform={`translate(${at(houseDeg, 82)}) `} d="M-9 9v-10l9 -8l9 8v10z" />
      )}
    </svg>
  )
}
