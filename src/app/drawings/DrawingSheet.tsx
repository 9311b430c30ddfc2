import { use, useMemo, type MouseEvent } from 'react'
import type { Drawing, Point, Shape } from '../../core/documents/drawings/drawing.ts'
import { Dimensions, layDimensions, type Dimension } from './dimension.tsx'
import { FigureTap } from './FigureTap.tsx'
import { placedFlags } from './flags.ts'
import './ink.css'
import { Inked } from './Inked.tsx'
import { paperFor, SHEET_WIDTH } from './paper.ts'
import { Flag, Levels } from './signs.tsx'
import { WorkingContext } from './working-context.ts'
import { r, written, writtenArgs, writtenLevel, type Writing } from './writing.ts'

/** Drawing data → ink on a sheet. `onTag` hears taps on things that can tell about themselves, `onPoint` where in the model a tap was. */
export function DrawingSheet({
  drawing,
  writing,
  spoken = writing,
  widthU = SHEET_WIDTH,
  mostHighU,
  upToCourse,
  chosen,
  onTag,
  onPoint,
}: {
  readonly drawing: Drawing
  readonly writing: Writing
  /** For the spoken label, where every figure carries its unit. */
  readonly spoken?: Writing
  readonly widthU?: number
  readonly mostHighU?: number
  /** In a drawing that builds up: the last course that stands. */
  readonly upToCourse?: number
  /** What a tap has chosen, outlined over everything. */
  readonly chosen?: readonly (readonly Point[])[]
  readonly onTag?: (tag: string) => void
  readonly onPoint?: (at: Point) => void
}) {
  const paper = useMemo(() => paperFor(drawing, writing, widthU, mostHighU), [drawing, writing, widthU, mostHighU])
  const dimensions = useMemo(
    () => drawing.shapes.filter((shape): shape is Dimension => shape.kind === 'dimension'),
    [drawing],
  )
  const showWorking = use(WorkingContext)
  const laid = useMemo(
    () => layDimensions(dimensions, paper, (dimension) => String(written(dimension.value, writing))),
    [dimensions, paper, writing],
  )
  const taps = showWorking === null ? [] : laid.figures.filter(({ working }) => working !== undefined)
  const flags = useMemo(() => placedFlags(drawing.shapes, paper), [drawing, paper])
  const outline = useMemo(() => chosen && ({ kind: 'area', ink: 'unit-chosen', rings: chosen } as const), [chosen])
  const hear = (event: MouseEvent<SVGSVGElement>) => {
    const tag = event.target instanceof Element ? event.target.closest('[data-tag]')?.getAttribute('data-tag') : null
    if (typeof tag === 'string') onTag?.(tag)
    const screen = event.currentTarget.getScreenCTM()?.inverse()
    if (screen === undefined || onPoint === undefined) return
    const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(screen)
    onPoint(paper.modelAt(x, y))
  }
  return (
    <svg
      className="ink"
      viewBox={`0 0 ${r(paper.widthU)} ${r(paper.heightU)}`}
      role={taps.length > 0 ? 'group' : 'img'}
      aria-label={told(drawing, spoken)}
      {...((onTag !== undefined || onPoint !== undefined) && { onClick: hear })}
    >
      {/* A drawing is one picture to those who hear it, beside it the figures that open. */}
      <g aria-hidden={taps.length > 0}>
        {drawing.shapes.map((shape, index) =>
          shape.kind !== 'dimension' && isShown(shape, upToCourse) ? (
            <Inked key={index} shape={shape} paper={paper} writing={writing} />
          ) : null,
        )}
        <Dimensions laid={laid} paper={paper} />
        <Levels
          xU={paper.levelsXU}
          toU={paper.widthU - 11}
          levels={drawing.shapes.flatMap((shape) =>
            shape.kind === 'level' ? [{ yU: paper.y(shape.yM), text: writtenLevel(shape.valueM, writing) }] : [],
          )}
        />
        {outline && <Inked shape={outline} paper={paper} writing={writing} />}
        {flags.map((flag) => (
          <Flag key={flag.number} {...flag} />
        ))}
      </g>
      {showWorking !== null &&
        taps.map(
          (figure, index) =>
            figure.working !== undefined && (
              <FigureTap
                key={index}
                figure={figure}
                working={figure.working}
                label={`${spoken.say(`working.${figure.working.id}`, figure.working.args)} ${spoken.figure(figure.working.value)}`}
                onOpen={showWorking}
              />
            ),
        )}
    </svg>
  )
}

/** A drawing in words: its label, and where that has no sizes, each size that stands on it. */
function told({ label, shapes }: Drawing, spoken: Writing): string {
  const text = spoken.say(label.key, writtenArgs(label.args, spoken))
  if (/\d/.test(text)) return text
  const sizes = shapes.flatMap((shape) => {
    const size = shape.kind === 'dimension' ? shape.value : shape.kind === 'text' ? shape.text : null
    return typeof size === 'object' && size !== null ? [written(size, spoken)] : []
  })
  return [text, ...new Set(sizes)].join(', ')
}

function isShown(shape: Shape, upToCourse: number | undefined): boolean {
  if (upToCourse === undefined || (shape.kind !== 'area' && shape.kind !== 'fire') || shape.shown === undefined)
    return true
  const { fromCourse, toCourse } = shape.shown
  return fromCourse <= upToCourse && (toCourse === undefined || upToCourse <= toCourse)
}
