import type { Paper } from './paper.ts'
import { r, type Writing } from './writing.ts'

/** Least distance between two running figures, upright beside each other. */
const RUNNING_ROOM = 15

/** Marks whose figures have room: the ends always, the others where they stand clear of the one before and of the last. */
function roomyMarks(marksM: readonly number[], paper: Paper): ReadonlySet<number> {
  const roomy = new Set<number>()
  const last = marksM.at(-1) ?? 0
  let takenU = Number.NEGATIVE_INFINITY
  for (const markM of marksM) {
    const xU = paper.x(markM)
    if (markM !== last && (xU - takenU < RUNNING_ROOM || paper.x(last) - xU < RUNNING_ROOM)) continue
    roomy.add(markM)
    takenU = xU
  }
  return roomy
}

/** Running tape marks: one line, a stroke a mark, figures turned to read from the right. */
export function Running({
  marksM,
  yU,
  paper,
  writing,
}: {
  readonly marksM: readonly number[]
  readonly yU: number
  readonly paper: Paper
  readonly writing: Writing
}) {
  const roomy = roomyMarks(marksM, paper)
  return (
    <>
      <path
        className="k-edge"
        d={`M${r(paper.x(marksM[0] ?? 0) - 8)} ${r(yU)}H${r(paper.x(marksM.at(-1) ?? 0) + 8)}`}
      />
      {marksM.map((markM) => {
        const xU = paper.x(markM)
        return (
          <g key={markM}>
            <path className="k-edge" d={`M${r(xU)} ${r(yU - 5)}v10`} />
            {roomy.has(markM) && (
              <text
                className="small"
                x={r(xU + 5)}
                y={r(yU + 10)}
                textAnchor="end"
                transform={`rotate(-90 ${r(xU + 5)} ${r(yU + 10)})`}
              >
                {writing.figure(markM)}
              </text>
            )}
          </g>
        )
      })}
    </>
  )
}
