import type { LaidCourse, PieceKind, PlacedUnit, WallId } from './contract.ts'
import type { Lane } from './course-shape.ts'
import { junctionAt, type Frame } from './frame.ts'
import type { LaidShape } from './laid-wall.ts'
import type { Levels } from './levels.ts'
import { toMetres } from './micrometres.ts'
import type { WholeLaid } from './whole-laying.ts'

/** One piece of a course in plan, micrometres; the pattern of a course is stamped at each of its levels. */
export interface PlanPiece {
  readonly wall: WallId
  readonly x: number
  readonly y: number
  readonly dx: number
  readonly dy: number
  readonly turn: 0 | 90
  readonly kind: PieceKind
  readonly cut: number | null
  /** Laid out mirrored: what is left of a cut unit is its far end. */
  readonly mirrored: boolean
}

/** A wall of the plan: where it stands, how its own measure along it maps to the plan. */
export interface WallPlace {
  readonly wall: WallId
  readonly alongX: boolean
  /** From `firstCourse` up; an extra course that this wall has no part of has a shape without runs. */
  readonly laid: readonly LaidShape[]
  readonly firstCourse: number
  /** Low edge across the wall and whether its outer face is the low one. */
  readonly low: number
  readonly outerLow: boolean
  /** Where the plan was laid out mirrored, its length: x is then counted from the other end. */
  readonly mirroredIn: number | null
}

/** x of something dx wide, turned back where the plan was laid out mirrored. */
export const placedX = ({ mirroredIn }: WallPlace, x: number, dx: number): number =>
  mirroredIn === null ? x : mirroredIn - x - dx

/** Name of cross wall k as the plan counts them, from the left. */
export const crossName = (chambers: number, k: number, mirrored: boolean): WallId => {
  const place = mirrored ? chambers - k : k
  return place === 0 ? 'left' : place === chambers ? 'right' : `divider-${place}`
}

/** The walls with their courses; `under` holds the extra courses of each wall, from the lowest up: front, back, cross walls. */
export function wallPlaces(
  frame: Frame,
  whole: WholeLaid,
  under: readonly (readonly LaidShape[])[] = [],
  mirrored = false,
): WallPlace[] {
  const { chambers, thickness, length, depth } = frame
  const extra = under[0]?.length ?? 0
  const shared = { firstCourse: 1 - extra, mirroredIn: mirrored ? length : null }
  const down = (index: number, laid: readonly LaidShape[]): readonly LaidShape[] =>
    extra === 0 ? laid : [...(under[index] ?? []), ...laid]
  const places: WallPlace[] = [
    { wall: 'front', alongX: true, laid: down(0, whole.front.laid), low: 0, outerLow: true, ...shared },
    { wall: 'back', alongX: true, laid: down(1, whole.back.laid), low: depth - thickness, outerLow: false, ...shared },
  ]
  for (let k = 0; k <= chambers; k++) {
    const wall = k === 0 ? whole.left : k === chambers ? whole.right : whole.divider
    if (wall === null) continue
    places.push({
      wall: crossName(chambers, k, mirrored),
      alongX: false,
      laid: down(2 + k, wall.laid),
      low: junctionAt(frame, k),
      outerLow: k < chambers,
      ...shared,
    })
  }
  return places
}

const acrossOf = (frame: Frame, place: WallPlace, lane: Lane): readonly [number, number] => {
  const { thickness, unitWidth } = frame
  if (lane === 'full') return [place.low, thickness]
  const atLow = (lane === 'outer') === place.outerLow
  return [atLow ? place.low : place.low + thickness - unitWidth, unitWidth]
}

function kindOf(frame: Frame, lie: 'along' | 'across', length: number): readonly [PieceKind, number | null] {
  if (lie === 'across') return length === frame.unitWidth ? ['header', null] : ['closer', length]
  if (length === frame.unitLength) return ['whole', null]
  const fromHalf = 2 * length - frame.unitLength
  return [Math.abs(fromHalf) <= 2 * 10_000 ? 'half' : 'cut', length]
}

/** The pieces of one course of one wall. */
function piecesOf(frame: Frame, place: WallPlace, laid: LaidShape): PlanPiece[] {
  const pieces: PlanPiece[] = []
  laid.shape.tracks.forEach(({ lane, lie, runs }, track) => {
    const [low, width] = acrossOf(frame, place, lane)
    const alongX = (lie === 'along') === place.alongX
    runs.forEach(({ from }, index) => {
      const fill = laid.fills[track]?.[index]
      fill?.lengths.forEach((length, i) => {
        const at = from + (fill.starts[i] ?? 0)
        const [kind, cut] = kindOf(frame, lie, length)
        const box = place.alongX ? { x: at, y: low, dx: length, dy: width } : { x: low, y: at, dx: width, dy: length }
        pieces.push({
          wall: place.wall,
          ...box,
          x: placedX(place, box.x, box.dx),
          turn: alongX ? 0 : 90,
          kind,
          cut,
          mirrored: place.mirroredIn !== null,
        })
      })
    })
  })
  return pieces
}

export interface Stamped {
  readonly units: readonly PlacedUnit[]
  readonly courses: readonly LaidCourse[]
  /** Cells that go through, times their plan area, m². */
  readonly patterns: readonly (readonly PlanPiece[])[]
}

/** Which cells of a pattern go through to the pattern below it; one list of flags per piece. */
export type CellsThrough = (
  pattern: readonly PlanPiece[],
  below: readonly PlanPiece[] | null,
  stepped: boolean,
) => readonly (readonly boolean[])[]

/** Places every piece of every course: patterns are worked out once and stamped at each level. */
export function stampUnits(frame: Frame, levels: Levels, places: readonly WallPlace[], cells: CellsThrough): Stamped {
  const patterns: PlanPiece[][] = []
  const patternAt = new Map<string, number>()
  const shapeNames = new Map<LaidShape, number>()
  const wallPieces = new Map<string, PlanPiece[]>()
  const through = new Map<string, readonly (readonly boolean[])[]>()
  const units: PlacedUnit[] = []
  const courses: LaidCourse[] = []
  const dzM = toMetres(levels.unitHeight)
  let below = -1
  const firstCourse = places[0]?.firstCourse ?? 1
  for (let course = firstCourse; course <= levels.count; course++) {
    const row = course - firstCourse
    const parts: string[] = []
    for (const { laid } of places) {
      const shape = laid[row]
      if (shape === undefined) continue
      let name = shapeNames.get(shape)
      if (name === undefined) shapeNames.set(shape, (name = shapeNames.size))
      parts.push(String(name))
    }
    const key = parts.join()
    let pattern = patternAt.get(key)
    if (pattern === undefined) {
      pattern = patterns.length
      patternAt.set(key, pattern)
      const list = places.flatMap((place, index) => {
        const shape = place.laid[row]
        if (shape === undefined) return []
        const wallKey = `${index}:${parts[index] ?? ''}`
        const known = wallPieces.get(wallKey) ?? piecesOf(frame, place, shape)
        wallPieces.set(wallKey, known)
        return known
      })
      patterns.push(list)
    }
    const list = patterns[pattern] ?? []
    const pairKey = `${pattern}/${below}`
    const flags = through.get(pairKey) ?? cells(list, below < 0 ? null : (patterns[below] ?? null), course <= 1)
    through.set(pairKey, flags)
    const zM = toMetres(levels.bottom(course))
    const firstUnit = units.length
    list.forEach((piece, index) => {
      units.push({
        id: units.length,
        course,
        wall: piece.wall,
        xM: toMetres(piece.x),
        yM: toMetres(piece.y),
        zM,
        dxM: toMetres(piece.dx),
        dyM: toMetres(piece.dy),
        dzM,
        turn: piece.turn,
        kind: piece.kind,
        cutLengthM: piece.cut === null ? null : toMetres(piece.cut),
        cellsOpen: flags[index] ?? [],
      })
    })
    courses.push({
      index: course,
      zBottomM: toMetres(levels.top(course - 1)),
      zTopM: toMetres(levels.top(course)),
      firstUnit,
      endUnit: units.length,
      pattern,
    })
    below = pattern
  }
  return { units, courses, patterns }
}
