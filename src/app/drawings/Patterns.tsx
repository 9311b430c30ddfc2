/** Fills of the drawings, once a page: hatch for cut masonry, stones for concrete, dots for sand, strokes for earth, wide hatch for offcuts. */
export function Patterns() {
  return (
    <svg width="0" height="0" className="patterns" aria-hidden="true" focusable="false">
      <defs>
        <pattern id="p-wall" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path d="M0 0V5" className="k-hatch" />
        </pattern>
        <pattern id="p-cut" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
          <path d="M0 0V7" className="k-hatch" />
        </pattern>
        <pattern id="p-conc" width="14" height="14" patternUnits="userSpaceOnUse">
          <circle cx="2" cy="3" r=".9" className="k-dot" />
          <circle cx="9" cy="6" r=".7" className="k-dot" />
          <circle cx="5" cy="11" r="1" className="k-dot" />
          <path d="M10 10l3 1l-2 2z" className="k-hatch" />
        </pattern>
        <pattern id="p-earth" width="16" height="9" patternUnits="userSpaceOnUse">
          <path d="M0 8L6 1M4 9L10 2M9 9L12 5" className="k-hatch" />
        </pattern>
        <pattern id="p-sand" width="7" height="7" patternUnits="userSpaceOnUse">
          <circle cx="1.5" cy="2" r=".8" className="k-dot" />
          <circle cx="5" cy="5.2" r=".8" className="k-dot" />
        </pattern>
      </defs>
    </svg>
  )
}
