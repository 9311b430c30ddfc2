import { memo } from 'react'
import type { Point, Shape } from '../../core/documents/drawings/drawing.ts'
import type { Dimension } from './dimension.tsx'
import { figureWidth, type Paper } from './paper.ts'
import { Running } from './Running.tsx'
import { Arrow, Fire, Peg } from './signs.tsx'
import { r, written, writtenArgs, type Writing } from './writing.ts'

/** Heights of the sizes of text, as `ink.css` has them. */
const TEXT_HEIGHT = { body: 15, small: 14, tiny: 12.5, big: 18 }

/** Clear of a thing's edge on each side of it. */
const BESIDE = { top: [0, -12], bottom: [0, 12], left: [-11, 0], right: [11, 0] } as const

/** One shape in ink. Kept as long as shape and paper are the same: a step of a slider draws only what it adds. */
export const Inked = memo(function Inked({
  shape,
  paper,
  writing,
}: {
  readonly shape: Exclude<Shape, Dimension>
  readonly paper: Paper
  readonly writing: Writing
}) {
  const point = ([xM, yM]: Point) => `${r(paper.x(xM))} ${r(paper.y(yM))}`
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
    case 'lines':
      return (
        <path className={`k-${shape.ink}`} d={shape.lines.map((line) => `M${line.map(point).join('L')}`).join('')} />
      )
    case 'running':
      return <Running marksM={shape.marksM} yU={paper.lane(shape.side, shape.lane)} paper={paper} writing={writing} />
    case 'text':
      return <Text shape={shape} paper={paper} writing={writing} />
    case 'words': {
      const text = writing.say(shape.key, writtenArgs(shape.args, writing))
      if (shape.roomM !== undefined && figureWidth(text) > shape.roomM * paper.unitsPerM) return null
      return (
        <text
          className="halo"
          textAnchor={shape.anchor ?? 'middle'}
          x={r(paper.x(shape.at[0]))}
          y={r(shape.lane ? paper.lane(shape.lane.side, shape.lane.lane) : paper.y(shape.at[1]))}
        >
          {text}
        </text>
      )
    }
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
    case 'wind': {
      const yU = paper.lane(shape.lane.side, shape.lane.lane) - 4
      const turn = (shape.towardDeg * Math.PI) / 180
      const [dxU, dyU] = [15 * Math.sin(turn), -15 * Math.cos(turn)]
      const xU = paper.x(shape.xM)
      return <Arrow fromU={[xU - dxU, yU - dyU]} toU={[xU + dxU, yU + dyU]} ember={false} />
    }
    case 'peg':
      return (
        <Peg
          xU={paper.x(shape.at[0])}
          yU={paper.y(shape.at[1])}
          driven={shape.driven}
          {...(shape.name !== undefined && { name: shape.name })}
          {...(shape.nameAt !== undefined && { nameAt: shape.nameAt })}
        />
      )
    case 'flag':
    case 'level':
      return null
    default:
      return shape satisfies never
  }
})

function Text({
  shape,
  paper,
  writing,
}: {
  readonly shape: Extract<Shape, { kind: 'text' }>
  readonly paper: Paper
  readonly writing: Writing
}) {
  const text = written(shape.text, writing)
  const heightU = TEXT_HEIGHT[shape.size ?? 'body']
  if (shape.roomM !== undefined && figureWidth(String(text), heightU) + 4 > shape.roomM * paper.unitsPerM) return null
  if (shape.highM !== undefined && heightU > shape.highM * paper.unitsPerM) return null
  const classes = [
    shape.size,
    shape.order === true && 'order',
    shape.on === 'soot' ? 'on-soot' : 'halo',
    shape.ember === true && 'ember',
  ]
  const isTurned = shape.turned === true
  const [alongU, acrossU] = shape.beside === undefined ? [0, 0] : BESIDE[shape.beside]
  const xU = paper.x(shape.at[0]) + alongU
  const yU = paper.y(shape.at[1]) + (isTurned ? 0 : 5) + acrossU
  return (
    <text
      className={classes.filter(Boolean).join(' ')}
      x={r(isTurned ? xU + 5 : xU)}
      y={r(yU)}
      textAnchor={shape.anchor ?? 'middle'}
      {...(isTurned && { transform: `rotate(-90 ${r(xU + 5)} ${r(yU)})` })}
      {...(shape.slantDeg !== undefined && { transform: `rotate(${r(-shape.slantDeg)} ${r(xU)} ${r(yU)})` })}
    >
      {text}
    </text>
  )
}
