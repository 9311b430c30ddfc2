import type { Plan } from '../../../core/plan/schema.ts'
import { UnitPicture } from './UnitPicture.tsx'

/** Small pictures of the present answers, for the decision lines. */
const frame = { className: 'ink', viewBox: '0 0 60 48', 'aria-hidden': true, focusable: false } as const

export const FishPicture = () => (
  <svg {...frame}>
    <path className="k-edge" d="M4 24q22 -22 44 0q-22 22 -44 0M48 24l9 -9v18z" />
    <circle className="k-solid" cx="14" cy="21" r="2" />
  </svg>
)

const SHOWN_CHAMBERS = 4

/** Chambers side by side, as many as there are; from five on the row shows that it goes on. */
export function ChambersPicture({ count }: { readonly count: number }) {
  const shown = Math.min(count, SHOWN_CHAMBERS)
  const side = shown === 1 ? 30 : 52 / shown
  const height = Math.min(30, side)
  const left = (60 - side * shown) / 2
  return (
    <svg {...frame}>
      {Array.from({ length: shown }, (_, index) => (
        <g key={index}>
          <rect className="k-masonry" x={left + index * side} y={24 - height / 2} width={side} height={height} />
          <rect
            className="k-unit"
            x={left + index * side + 4}
            y={28 - height / 2}
            width={side - 8}
            height={height - 8}
          />
        </g>
      ))}
      {count > SHOWN_CHAMBERS && <path className="k-hidden" d="M57 12v24" />}
    </svg>
  )
}

export const WallsPicture = ({ unit }: { readonly unit: Plan['walls']['unit'] }) => (
  <UnitPicture unit={unit} acrossM={0.62} highM={0.44} />
)

export const OpeningPicture = () => (
  <svg {...frame}>
    <path className="k-unit" d="M2 6h56v38H2z" />
    <path className="k-hollow" d="M20 22h20v22H20z" />
    <path className="k-lintel" d="M12 12h36v10H12z" />
    <path
      className="k-flame"
      d="M30 43c-4 0-5.5-3-5-6 .5-2.3 2-3.2 2.3-5.5.9 1.4 1.4 2.3 1.4 3.7.9-2.3.9-5.5 2.8-7.8 0 3.2 2.3 5.1 3.2 8.3.9 3.2-.5 7.3-4.7 7.3z"
    />
  </svg>
)

export const GroundLinePicture = () => (
  <svg {...frame}>
    <path className="k-earth" d="M0 12h18v12H0zM42 12h18v12H42z" />
    <path className="k-outline" d="M0 12h18M42 12h18" />
    <path className="k-unit" d="M22 4h16v30H22z" />
    <path className="k-concrete" d="M14 34h32v10H14z" />
  </svg>
)

export const TrayPicture = () => (
  <svg {...frame}>
    <path className="k-wood-face" d="M4 16h52v10H4z" />
    <path className="k-mesh" d="M4 28h52" />
    <path className="k-edge" d="M0 20h4M56 20h4" />
  </svg>
)

export const WindPicture = () => (
  <svg {...frame}>
    <path className="k-edge" d="M30 6v36M12 24h36" />
    <path className="k-outline" d="M14 40L40 14M28 13l13 0l0 13" />
    <circle className="k-edge" cx="30" cy="24" r="18" />
  </svg>
)

export const MixPicture = () => (
  <svg {...frame}>
    <path className="k-concrete" d="M8 20h44l-6 20H14z" />
    <path className="k-edge" d="M4 20h52M30 6v14M24 6h12" />
  </svg>
)

export const MoneyPicture = () => (
  <svg {...frame}>
    <path className="k-edge" d="M8 22h44v22H8zM24 33h12" />
    <path className="k-edge" d="M20 22v-6a10 10 0 0 1 20 0v6" />
  </svg>
)

export const UnitsPicture = () => (
  <svg {...frame}>
    <path className="k-edge" d="M4 16h52v16H4z" />
    <path className="k-thin" d="M12 16v6M20 16v9M28 16v6M36 16v9M44 16v6M52 16v6" />
  </svg>
)
