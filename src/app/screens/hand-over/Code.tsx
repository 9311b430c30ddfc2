import { memo } from 'react'

/** Dark modules of a row as one path: runs, so that a code of ten thousand modules is a few thousand strokes. */
function pathOf(rows: readonly (readonly boolean[])[]): string {
  let path = ''
  rows.forEach((row, y) => {
    for (let x = 0; x < row.length; x++) {
      if (row[x] !== true) continue
      const from = x
      while (row[x + 1] === true) x++
      path += `M${String(from)} ${String(y)}h${String(x + 1 - from)}v1H${String(from)}z`
    }
  })
  return path
}

/** A code for another phone's camera (ISO/IEC 18004), drawn from its modules. */
export const Code = memo(function Code({
  rows,
  label,
}: {
  readonly rows: readonly (readonly boolean[])[]
  readonly label: string
}) {
  const side = String(rows.length)
  return (
    <div className="code">
      <svg role="img" aria-label={label} viewBox={`0 0 ${side} ${side}`} shapeRendering="crispEdges">
        <path d={pathOf(rows)} />
      </svg>
    </div>
  )
})
