import './pictures.css'

/** A picket pushed into the ground by hand: how deep it goes is the answer. */
export function PicketPicture({ depth }: { readonly depth: 'short' | 'hand' | 'deep' }) {
  const drop = { short: 4, hand: 16, deep: 26 }[depth]
  return (
    <svg className="ink" viewBox="0 0 132 60" aria-hidden="true" focusable="false">
      <path className="k-earth" d="M0 30h132v28H0z" />
      <path className="k-outline" d="M0 30H132" />
      <path className="k-unit" d={`M61 6h9v${String(18 + drop)}l-4.5 6l-4.5 -6z`} />
      <path className="k-outline" d="M55 6H76" />
    </svg>
  )
}

/** A thumb pressed into clay: what gives. */
export function ThumbPicture({ depth }: { readonly depth: 'sand' | 'soft' | 'firm' | 'stiff' }) {
  const drop = { sand: 10, soft: 14, firm: 7, stiff: 1 }[depth]
  return (
    <svg className="ink" viewBox="0 0 132 60" aria-hidden="true" focusable="false">
      <path className={depth === 'sand' ? 'k-fill' : 'k-earth'} d="M0 30h132v28H0z" />
      <path className="k-outline" d={`M0 30H54l2 ${String(drop)}h20l2 ${String(-drop)}H132`} />
      <path className="k-unit" d={`M56 2h20v${String(20 + drop)}a10 8 0 0 1 -20 0z`} />
      <path className="k-thin" d={`M60 ${String(16 + drop)}h12a6 6 0 0 1 -12 0`} />
    </svg>
  )
}
