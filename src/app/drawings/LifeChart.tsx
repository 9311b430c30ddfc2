import './chart.css'
import './ink.css'
import { r } from './writing.ts'

/** Years from and to; an open end is null. */
export interface LifeSaid {
  readonly fromYears: number
  readonly toYears: number | null
  /** Said of a like material and not of this one. */
  readonly likeness: boolean
}

const WIDTH = 320
const MOST_YEARS = 15
const LIFE_TICKS_YEARS: readonly number[] = [0, 5, 10]
/** A single number of years is drawn as wide as this, so that it is seen. */
const LEAST_WIDTH = 7
const TOP = 3
const BAR = 16

const xOf = (years: number): number => 1 + (years / MOST_YEARS) * (WIDTH - 2)

/** One published life of a wall on a line of years: solid for this material, hatched for a like one, with an arrow where no end is given. */
export function LifeBar({ life: { fromYears, toYears, likeness } }: { readonly life: LifeSaid }) {
  const from = xOf(fromYears)
  const to = toYears === null ? WIDTH - 12 : Math.max(xOf(toYears), from + LEAST_WIDTH)
  const middle = TOP + BAR / 2
  return (
    <svg className="ink chart" viewBox={`-4 0 ${String(WIDTH + 8)} ${String(BAR + 7)}`} aria-hidden="true">
      {LIFE_TICKS_YEARS.map((years) => (
        <path key={years} className="chart-rule" d={`M${r(xOf(years))} 0V${String(BAR + 6)}`} />
      ))}
      <rect className={likeness ? 'k-offcut' : 'k-wood'} x={r(from)} y={TOP} width={r(to - from)} height={BAR} />
      {toYears === null && (
        <path
          className="k-wood"
          d={`M${r(to)} ${String(middle - 9)}L${String(WIDTH)} ${r(middle)}L${r(to)} ${String(middle + 9)}Z`}
        />
      )}
      <path className="k-ground" d={`M0 ${String(BAR + 6)}H${String(WIDTH)}`} />
    </svg>
  )
}

/** The years over the bars. */
export function LifeYears({ text }: { readonly text: (years: number) => string }) {
  return (
    <svg className="ink chart" viewBox={`-4 0 ${String(WIDTH + 8)} 20`} aria-hidden="true">
      {LIFE_TICKS_YEARS.map((years) => (
        <text key={years} x={r(xOf(years))} y="15" textAnchor={years === 0 ? 'start' : 'middle'}>
          {text(years)}
        </text>
      ))}
    </svg>
  )
}
