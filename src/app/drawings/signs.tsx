import type { PlacedFlag } from './flags.ts'

/** Signs that do not scale with the model: levels, flags, pegs, arrows, the fire. */
const r = (value: number): string => String(Math.round(value * 100) / 100)

/** Least distance of two levels whose figures stand one above the other. */
const LEVEL_ROOM = 17

/** Levels from the highest down; one too close under another steps down on its line, so that every figure can be read. */
export function Levels({
  xU,
  toU,
  levels,
}: {
  readonly xU: number
  /** Where their lines end. */
  readonly toU: number
  readonly levels: readonly { readonly yU: number; readonly text: string }[]
}) {
  const placed: { readonly yU: number; readonly text: string; readonly shownU: number }[] = []
  for (const level of levels.toSorted((a, b) => a.yU - b.yU)) {
    const above = placed.at(-1)
    placed.push({ ...level, shownU: above === undefined ? level.yU : Math.max(level.yU, above.shownU + LEVEL_ROOM) })
  }
  return placed.map(({ yU, shownU, text }) => (
    <g key={text}>
      {shownU > yU && <path className="k-extension" d={`M${r(xU - 14)} ${r(yU)}L${r(xU - 7)} ${r(shownU)}`} />}
      <path className="k-solid" d={`M${r(xU)} ${r(shownU)}l-5 -8h10z`} />
      <path className="k-extension" d={`M${r(xU - 7)} ${r(shownU)}H${r(toU)}`} />
      <text className="halo" x={r(xU + 8)} y={r(shownU - 4)}>
        {text}
      </text>
    </g>
  ))
}

export function Flag({ xU, yU, level, number, more }: PlacedFlag) {
  const middle = level === 'caution' ? 7 : 5
  return (
    <g>
      {level === 'problem' && <rect className="k-flag-problem" x={r(xU - 10)} y={r(yU - 10)} width="20" height="20" />}
      {level === 'caution' && <path className="k-flag-caution" d={`M${r(xU)} ${r(yU - 13)}l13 23h-26z`} />}
      {level === 'good' && <circle className="k-flag-good" cx={r(xU)} cy={r(yU)} r="10" />}
      <text className={`flag ${level}`} x={r(xU)} y={r(yU + middle)} textAnchor="middle">
        {number}
        {more ? '+' : ''}
      </text>
    </g>
  )
}

/** One flame shape everywhere, on two crossed logs; `heightU` is the flame's height on the paper. */
export function Fire({ xU, yU, heightU }: { readonly xU: number; readonly yU: number; readonly heightU: number }) {
  return (
    <g transform={`translate(${r(xU)} ${r(yU)}) scale(${r(heightU / 34)})`}>
      <path className="k-wood-face" d="M-20 -1L18 -7l1.6 6L-18 5zM20 -1L-18 -7l-1.6 6L18 5z" />
      <path
        className="k-flame"
        d="M0 0C-9 0-12-7-11-13C-10-18-7-20-6-25C-4-22-3-20-3-17C-1-22-1-29 3-34C3-27 8-23 10-16C12-9 10 0 0 0Z"
      />
      <path className="k-flame-core" d="M0 0C-5 0-6-4-5-8C-3-6-2-9 0-14C2-9 6-8 5-4C5-1 3 0 0 0Z" />
    </g>
  )
}

export function Arrow({
  fromU,
  toU,
  ember,
}: {
  readonly fromU: readonly [number, number]
  readonly toU: readonly [number, number]
  readonly ember: boolean
}) {
  const angle = Math.atan2(toU[1] - fromU[1], toU[0] - fromU[0])
  const barb = (turn: number) =>
    `M${r(toU[0])} ${r(toU[1])}l${r(10 * Math.cos(angle + turn))} ${r(10 * Math.sin(angle + turn))}`
  return (
    <path
      className={ember ? 'k-arrow ember' : 'k-arrow'}
      d={`M${r(fromU[0])} ${r(fromU[1])}L${r(toU[0])} ${r(toU[1])}${barb(2.6)}${barb(-2.6)}`}
    />
  )
}

export function Peg({
  xU,
  yU,
  name,
  nameAt = 'above-left',
  driven,
}: {
  readonly xU: number
  readonly yU: number
  readonly name?: string
  readonly nameAt?: 'above-left' | 'above-right' | 'below-left' | 'below-right'
  readonly driven: boolean
}) {
  const isRight = nameAt.endsWith('right')
  return (
    <>
      <rect className={driven ? 'k-peg driven' : 'k-peg'} x={r(xU - 4)} y={r(yU - 4)} width="8" height="8" />
      {name !== undefined && (
        <text
          className="big halo"
          x={r(isRight ? xU + 8 : xU - 8)}
          y={r(nameAt.startsWith('below') ? yU + 19 : yU - 8)}
          textAnchor={isRight ? 'start' : 'end'}
        >
          {name}
        </text>
      )}
    </>
  )
}
