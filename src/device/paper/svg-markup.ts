/**
 * Reads the SVG that our own drawings write: paths, rectangles, circles and text in groups with translate, scale and rotate.
 * Nothing else is drawn by them, so anything else is a mistake in a drawing and throws.
 */
export type InkOp =
  | { readonly kind: 'path'; readonly ink: readonly string[]; readonly segments: readonly Segment[] }
  | {
      readonly kind: 'circle'
      readonly ink: readonly string[]
      readonly x: number
      readonly y: number
      readonly radius: number
    }
  | {
      readonly kind: 'text'
      readonly ink: readonly string[]
      readonly x: number
      readonly y: number
      readonly text: string
      readonly anchor: 'start' | 'middle' | 'end'
      readonly turnDeg: number
    }

export type Segment =
  | { readonly to: 'move' | 'line'; readonly x: number; readonly y: number }
  | {
      readonly to: 'curve'
      readonly x1: number
      readonly y1: number
      readonly x2: number
      readonly y2: number
      readonly x: number
      readonly y: number
    }
  | { readonly to: 'close' }

export interface ReadSvg {
  readonly width: number
  readonly height: number
  readonly x0: number
  readonly y0: number
  readonly ops: readonly InkOp[]
}

/** x' = a·x + c·y + e, y' = b·x + d·y + f, as SVG writes a matrix. */
type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number]
const SAME: Matrix = [1, 0, 0, 1, 0, 0]

const times = ([a, b, c, d, e, f]: Matrix, [A, B, C, D, E, F]: Matrix): Matrix => [
  a * A + c * B,
  b * A + d * B,
  a * C + c * D,
  b * C + d * D,
  a * E + c * F + e,
  b * E + d * F + f,
]

const numbers = (text: string): number[] => (text.match(/-?(?:\d+\.?\d*|\.\d+)(?:e-?\d+)?/gi) ?? []).map(Number)

function transformOf(text: string | undefined): Matrix {
  let matrix = SAME
  for (const [, name, inside] of (text ?? '').matchAll(/(\w+)\(([^)]*)\)/g)) {
    const [one = 0, two, three] = numbers(inside ?? '')
    if (name === 'translate') matrix = times(matrix, [1, 0, 0, 1, one, two ?? 0])
    else if (name === 'scale') matrix = times(matrix, [one, 0, 0, two ?? one, 0, 0])
    else if (name === 'rotate') {
      const turn = (one * Math.PI) / 180
      const [x, y] = [two ?? 0, three ?? 0]
      matrix = times(matrix, [1, 0, 0, 1, x, y])
      matrix = times(matrix, [Math.cos(turn), Math.sin(turn), -Math.sin(turn), Math.cos(turn), 0, 0])
      matrix = times(matrix, [1, 0, 0, 1, -x, -y])
    } else throw new Error(`a drawing uses ${String(name)}`)
  }
  return matrix
}

const ENTITIES: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  '#x27': "'",
  '#39': "'",
  nbsp: '\u00a0',
}
const plain = (text: string): string => text.replace(/&([#\w]+);/g, (all, name: string) => ENTITIES[name] ?? all)

const attributesOf = (text: string): Record<string, string> =>
  Object.fromEntries(
    [...text.matchAll(/([\w:-]+)="([^"]*)"/g)].map(([, name, value]) => [name ?? '', plain(value ?? '')]),
  )

/** The drawing's own size and everything on it, in its units, group transforms worked in. */
export function readSvg(markup: string): ReadSvg {
  const ops: InkOp[] = []
  const groups: { matrix: Matrix; ink: readonly string[] }[] = []
  let size = [0, 0, 0, 0]
  const texts: { open: Record<string, string>; words: string }[] = []
  for (const [, close, name, inside, end, words] of markup.matchAll(/<(\/?)([a-zA-Z]+)([^>]*?)(\/?)>([^<]*)/g)) {
    const attributes = attributesOf(inside ?? '')
    const group = groups.at(-1) ?? { matrix: SAME, ink: [] }
    if (close === '/') {
      if (name === 'g' || name === 'svg') groups.pop()
      else if (name === 'text') ops.push(...texts.splice(0).map(({ open, words: said }) => textOp(open, said, group)))
    } else if (name === 'svg') {
      size = numbers(attributes['viewBox'] ?? '0 0 1 1')
      groups.push(group)
    } else if (name === 'g') {
      const matrix = times(group.matrix, transformOf(attributes['transform']))
      const ink = [...group.ink, ...classesOf(attributes)]
      if (end !== '/') groups.push({ matrix, ink })
    } else if (name === 'text') texts.push({ open: attributes, words: plain(words ?? '') })
    else if (name === 'path' || name === 'rect' || name === 'circle') {
      ops.push(...shapeOps(name, attributes, group))
    }
  }
  const [x0 = 0, y0 = 0, width = 1, height = 1] = size
  return { width, height, x0, y0, ops }
}

const classesOf = (attributes: Record<string, string>): string[] =>
  (attributes['class'] ?? '').split(' ').filter(Boolean)

interface Group {
  readonly matrix: Matrix
  readonly ink: readonly string[]
}

const at = ([a, b, c, d, e, f]: Matrix, x: number, y: number): { readonly x: number; readonly y: number } => ({
  x: a * x + c * y + e,
  y: b * x + d * y + f,
})

function textOp(open: Record<string, string>, words: string, group: Group): InkOp {
  const own = transformOf(open['transform'])
  const matrix = times(group.matrix, own)
  const anchor = open['text-anchor']
  return {
    kind: 'text',
    ink: [...group.ink, ...classesOf(open)],
    ...at(matrix, Number(open['x'] ?? 0), Number(open['y'] ?? 0)),
    text: words,
    anchor: anchor === 'middle' || anchor === 'end' ? anchor : 'start',
    turnDeg: (Math.atan2(matrix[1], matrix[0]) * 180) / Math.PI,
  }
}

function shapeOps(name: 'path' | 'rect' | 'circle', attributes: Record<string, string>, group: Group): InkOp[] {
  const matrix = times(group.matrix, transformOf(attributes['transform']))
  const ink = [...group.ink, ...classesOf(attributes)]
  const number = (key: string) => Number(attributes[key] ?? 0)
  if (name === 'circle') {
    const radius = number('r') * Math.hypot(matrix[0], matrix[1])
    return [{ kind: 'circle', ink, ...at(matrix, number('cx'), number('cy')), radius }]
  }
  const d =
    name === 'path'
      ? (attributes['d'] ?? '')
      : `M${number('x')} ${number('y')}h${number('width')}v${number('height')}h${-number('width')}z`
  return [{ kind: 'path', ink, segments: segmentsOf(d, matrix) }]
}

/** Path data with absolute and relative moves, lines and cubic curves. */
function segmentsOf(d: string, matrix: Matrix): Segment[] {
  const segments: Segment[] = []
  let [x, y, startX, startY] = [0, 0, 0, 0]
  const push = (to: 'move' | 'line') => segments.push({ to, ...at(matrix, x, y) })
  for (const [, letter = '', inside = ''] of d.matchAll(/([a-zA-Z])([^a-zA-Z]*(?:e-?\d+[^a-zA-Z]*)*)/g)) {
    const values = numbers(inside)
    const isRelative = letter === letter.toLowerCase()
    switch (letter.toUpperCase()) {
      case 'M':
      case 'L':
        for (let index = 0; index + 1 < values.length; index += 2) {
          x = (values[index] ?? 0) + (isRelative ? x : 0)
          y = (values[index + 1] ?? 0) + (isRelative ? y : 0)
          const isMove = letter.toUpperCase() === 'M' && index === 0
          if (isMove) [startX, startY] = [x, y]
          push(isMove ? 'move' : 'line')
        }
        break
      case 'H':
        for (const value of values) {
          x = value + (isRelative ? x : 0)
          push('line')
        }
        break
      case 'V':
        for (const value of values) {
          y = value + (isRelative ? y : 0)
          push('line')
        }
        break
      case 'C':
        for (let index = 0; index + 5 < values.length; index += 6) {
          const [ax = 0, ay = 0, bx = 0, by = 0, cx = 0, cy = 0] = values.slice(index, index + 6)
          const [ox, oy] = isRelative ? [x, y] : [0, 0]
          const one = at(matrix, ax + ox, ay + oy)
          const two = at(matrix, bx + ox, by + oy)
          x = cx + ox
          y = cy + oy
          segments.push({ to: 'curve', x1: one.x, y1: one.y, x2: two.x, y2: two.y, ...at(matrix, x, y) })
        }
        break
      case 'Z':
        segments.push({ to: 'close' })
        ;[x, y] = [startX, startY]
        break
      default:
        throw new Error(`a drawing's path uses ${letter}`)
    }
  }
  return segments
}
