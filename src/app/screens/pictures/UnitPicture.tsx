import type { WallUnit } from '../../../core/plan/schema.ts'
import './pictures.css'

type Point = readonly [number, number]

/** Seen from the front right, a little from above: x along the length, y into the depth, z up. */
const seen = (xM: number, yM: number, zM: number): Point => [xM * 0.94 + yM * 0.5, xM * 0.17 - yM * 0.3 - zM * 0.95]
const path = (corners: readonly Point[]): string =>
  `M${corners.map(([x, y]) => `${x.toFixed(4)} ${y.toFixed(4)}`).join('L')}Z`

/** A wall unit in space on its ground line. All pictures of one list share `acrossM`, the width they show, so they stand to one scale. */
export function UnitPicture({
  unit,
  acrossM = 0.74,
  highM = 0.42,
}: {
  readonly unit: Pick<WallUnit, 'lengthM' | 'widthM' | 'heightM' | 'cells'>
  readonly acrossM?: number
  readonly highM?: number
}) {
  const { lengthM: l, widthM: w, heightM: h, cells } = unit
  const [rightX] = seen(l, w, 0)
  const [, lowY] = seen(l, 0, 0)
  const left = (acrossM - rightX) / 2
  const drop = highM - lowY - 0.02
  return (
    <svg
      className="unit-picture ink"
      viewBox={`0 0 ${String(acrossM)} ${String(highM)}`}
      aria-hidden="true"
      focusable="false"
    >
      <g transform={`translate(${left.toFixed(4)} ${drop.toFixed(4)})`}>
        <path className="k-face" d={path([seen(0, 0, 0), seen(l, 0, 0), seen(l, 0, h), seen(0, 0, h)])} />
        <path className="k-face-shaded" d={path([seen(l, 0, 0), seen(l, w, 0), seen(l, w, h), seen(l, 0, h)])} />
        <path className="k-face" d={path([seen(0, 0, h), seen(l, 0, h), seen(l, w, h), seen(0, w, h)])} />
        {cells.map((cell) => {
          const [x0, x1] = [cell.fromM, cell.fromM + cell.lengthM]
          const [y0, y1] = [(w - cell.widthM) / 2, (w + cell.widthM) / 2]
          return (
            <path
              key={cell.fromM}
              className="k-hollow"
              d={path([seen(x0, y0, h), seen(x1, y0, h), seen(x1, y1, h), seen(x0, y1, h)])}
            />
          )
        })}
      </g>
      <path className="k-outline" d={`M0 ${String(highM - 0.012)}H${String(acrossM)}`} />
    </svg>
  )
}
