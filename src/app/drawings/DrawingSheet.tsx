import { useMemo, type MouseEvent } from 'react'
import type { Drawing, Figure, Shape } from '../../core/documents/drawings/drawing.ts'
import { Dimensions, type Dimension } from './dimension.tsx'
import './ink.css'
import { figureWidth, paperFor, SHEET_WIDTH, type Paper } from './paper.ts'
import { Arrow, Fire, Flag, Levels, Peg } from './signs.tsx'

/** How figures and words are written for this reader; drawings know no store. */
export interface Writing {
  /** A length in the reader's unit, bare: the unit stands once in the corner of the frame. */
  readonly figure: (lengthM: number) => string
  readonly say: (key: string, args?: Readonly<Record<string, string | number>>) => string
}

/** Heights of the sizes of text, as `ink.css` has them. */
const TEXT_HEIGHT = { body: 15, small: 14, tiny: 12.5, big: 18 }

const r = (value: number): string => String(Math.round(value * 100) / 100)

const written = (value: Figure | number | string, writing: Writing): string | number =>
  typeof value === 'object' ? writing.figure(value.lengthM) : value

const writtenArgs = (args: Readonly<Record<string, Figure | number | string>> | undefined, writing: Writing) =>
  Object.fromEntries(Object.entries(args ?? {}).map(([name, value]) => [name, written(value, writing)]))

/** A signed level: +600, ±0, −340. */
const level = (valueM: number, writing: Writing): string =>
  Math.abs(valueM) < 5e-4 ? '±0' : `${valueM > 0 ? '+' : '−'}${writing.figure(Math.abs(valueM))}`

/** Drawing data → ink on a sheet. `onTag` hears taps on things that can tell about themselves. */
export function DrawingSheet({
  drawing,
  writing,
  spoken = writing,
  widthU = SHEET_WIDTH,
  mostHighU,
  onTag,
}: {
  readonly drawing: Drawing
  readonly writing: Writing
  /** For the spoken label, where every figure carries its unit. */
  readonly spoken?: Writing
  readonly widthU?: number
  readonly mostHighU?: number
  readonly onTag?: (tag: string) => void
}) {
  const paper = useMemo(() => paperFor(drawing, widthU, mostHighU), [drawing, widthU, mostHighU])
  const dimensions = drawing.shapes.filter((shape): shape is Dimension => shape.kind === 'dimension')
  const write = (dimension: Dimension): string => String(written(dimension.value, writing))
  const hear =
    onTag &&
    ((event: MouseEvent<SVGSVGElement>) => {
      const tag = event.target instanceof Element ? event.target.closest('[data-tag]')?.getAttribute('data-tag') : null
      if (typeof tag === 'string') onTag(tag)
    })
  return (
    <svg
      className="ink"
      viewBox={`0 0 ${r(paper.widthU)} ${r(paper.heightU)}`}
      role="img"
      aria-label={spoken.say(drawing.label.key, writtenArgs(drawing.label.args, spoken))}
      {...(hear && { onClick: hear })}
    >
      {drawing.shapes.map((shape, index) =>
        shape.kind === 'dimension' ? null : <Inked key={index} shape={shape} paper={paper} writing={writing} />,
      )}
      <Dimensions dimensions={dimensions} paper={paper} write={write} />
      <Levels
        xU={paper.widthU - 62}
        levels={drawing.shapes.flatMap((shape) =>
          shape.kind === 'level' ? [{ yU: paper.y(shape.yM), text: level(shape.valueM, writing) }] : [],
        )}
      />
      {drawing.shapes.map((shape, index) =>
        shape.kind === 'flag' ? (
          <Flag
            key={index}
            xU={paper.x(shape.at[0])}
            yU={paper.y(shape.at[1])}
            level={shape.level}
            number={shape.number}
          />
        ) : null,
      )}
    </svg>
  )
}

function Inked({
  shape,
  paper,
  writing,
}: {
  readonly shape: Exclude<Shape, Dimension>
  readonly paper: Paper
  readonly writing: Writing
}) {
  const point = ([xM, yM]: readonly [number, number]) => `${r(paper.x(xM))} ${r(paper.y(yM))}`
  switch (shape.kind) {
    case 'area':
      return (
        <path
          className={`k-${shape.ink}`}
          fillRule="evenodd"
          d={shape.rings.map((ring) => `M${ring.map(point).join('L')}Z`).join('')}
          {...(shape.tag !== undefined && { 'data-tag': shape.tag })}
        />
      )
    case 'line':
      return <path className={`k-${shape.ink}`} d={`M${shape.points.map(point).join('L')}`} />
    case 'running':
      return <Running marksM={shape.marksM} yU={paper.lane(shape.side, shape.lane)} paper={paper} writing={writing} />
    case 'text': {
      const classes = [shape.size, shape.order === true && 'order', shape.on === 'soot' ? 'on-soot' : 'halo']
      const text = written(shape.text, writing)
      if (
        shape.roomM !== undefined &&
        figureWidth(String(text), TEXT_HEIGHT[shape.size ?? 'body']) + 4 > shape.roomM * paper.unitsPerM
      )
        return null
      const xU = paper.x(shape.at[0])
      const yU = paper.y(shape.at[1]) + (shape.turned === true ? 0 : 5)
      return (
        <text
          className={classes.filter(Boolean).join(' ')}
          x={r(shape.turned === true ? xU + 5 : xU)}
          y={r(yU)}
          textAnchor={shape.anchor ?? 'middle'}
          {...(shape.turned === true && { transform: `rotate(-90 ${r(xU + 5)} ${r(yU)})` })}
        >
          {text}
        </text>
      )
    }
    case 'words':
      return (
        <text
          className="halo"
          textAnchor="middle"
          x={r(paper.x(shape.at[0]))}
          y={r(shape.lane ? paper.lane(shape.lane.side, shape.lane.lane) : paper.y(shape.at[1]))}
        >
          {writing.say(shape.key, writtenArgs(shape.args, writing))}
        </text>
      )
    case 'fire':
      return <Fire xU={paper.x(shape.at[0])} yU={paper.y(shape.at[1])} heightU={shape.heightM * paper.unitsPerM} />
    case 'arrow':
      return (
        <Arrow
          fromU={[paper.x(shape.from[0]), paper.y(shape.from[1])]}
          toU={[paper.x(shape.to[0]), paper.y(shape.to[1])]}
          ember={shape.ember === true}
        />
      )
    case 'peg':
      return (
        <Peg
          xU={paper.x(shape.at[0])}
          yU={paper.y(shape.at[1])}
          driven={shape.driven}
          {...(shape.name !== undefined && { name: shape.name })}
        />
      )
    case 'flag':
    case 'level':
      return null
    default:
      return shape satisfies never
  }
}

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
function Running({
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
