import './chart.css'
import './ink.css'
import { r } from './writing.ts'

/** Looks that can be told apart without colour. */
export type BarFill = 'solid' | 'hatched' | 'dotted' | 'empty'

export interface BarRow {
  readonly key: string
  readonly name: string
  /** The figure in words, at the right. */
  readonly text: string
  readonly parts: readonly { readonly value: number; readonly fill: BarFill }[]
}

const CLASS: Readonly<Record<BarFill, string>> = {
  solid: 'k-wood',
  hatched: 'k-offcut',
  dotted: 'k-fill',
  empty: 'k-wood-face',
}
const WIDTH = 320
const ROW = 46
const BAR = 18

/** Bars one over the other on one scale, each with its name and figure; the longest reaches across. */
export function Bars({ rows, label }: { readonly rows: readonly BarRow[]; readonly label: string }) {
  const most = Math.max(
    ...rows.map(({ parts }) => parts.reduce((sum, { value }) => sum + Math.max(0, value), 0)),
    Number.MIN_VALUE,
  )
  return (
    <svg
      className="ink chart"
      viewBox={`-8 0 ${String(WIDTH + 16)} ${String(rows.length * ROW)}`}
      role="img"
      aria-label={[label, ...rows.map(({ name, text }) => `${name} ${text}`)].join('. ')}
    >
      {rows.map(({ key, name, text, parts }, row) => {
        const y = row * ROW
        let atU = 1
        return (
          <g key={key}>
            <text x="0" y={y + 16}>
              {name}
            </text>
            <text x={WIDTH} y={y + 16} textAnchor="end">
              {text}
            </text>
            {parts.map(({ value, fill }, index) => {
              const width = (Math.max(0, value) / most) * (WIDTH - 2)
              const x = atU
              atU += width
              return <rect key={index} className={CLASS[fill]} x={r(x)} y={y + 22} width={r(width)} height={BAR} />
            })}
            <path className="k-ground" d={`M0 ${String(y + 22 + BAR + 1)}H${String(WIDTH)}`} />
          </g>
        )
      })}
    </svg>
  )
}
