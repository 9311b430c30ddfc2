import './pictures.css'

/** Sloping ground under one level line: how far down to the ground at the left peg and at another, and how far apart they stand. */
export const SlopePicture = () => (
  <svg className="ink" viewBox="0 0 320 92" aria-hidden="true" focusable="false">
    <path className="k-earth" d="M0 58L320 78V92H0z" />
    <path className="k-ground" d="M0 58L320 78" />
    <path className="k-string" d="M20 16H300" />
    <path className="k-dim" d="M44 12V65M276 12V79M40 34H280" />
    <path className="k-tick" d="M40 20l8 -8M40 65l8 -8M272 20l8 -8M272 79l8 -8M40 38l8 -8M272 38l8 -8" />
    <text className="halo" x="30" y="50" textAnchor="middle">
      A
    </text>
    <text className="halo" x="292" y="56" textAnchor="middle">
      B
    </text>
  </svg>
)
