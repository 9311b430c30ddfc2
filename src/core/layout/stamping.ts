import type { LaidCourse, PieceKind, PlacedUnit, WallId } from './contract.ts'
import type { Lane } from './course-shape.ts'
import { junctionAt, type Frame } from './frame.ts'
import type { LaidShape } from './laid-wall.ts'
import type { Levels } from './levels.ts'
import { toMetres } from './micrometres.ts'
import type { WholeLaid } from './choosing.ts'

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
}

/** A wall of the plan: where it stands, how its own measure along it maps to the plan. */
export interface WallPlace {
  readonly wall: WallId
  readonly alongX: boolean
  readonly laid: readonly LaidShape[]
  /** Low edge across the wall and whether its outer face is the low one. */
  readonly low: number
  readonly outerLow: boolean
}

export function wallPlaces(frame: Frame, whole: WholeLaid): WallPlace[] {
  const { chambers, thickness, length, depth } = frame
  const places: WallPlace[] = [
    { wall: 'front', alongX: true, laid: whole.front.laid, low: 0, outerLow: true },
    { wall: 'back', alongX: true, laid: whole.back.laid, low: depth - thickness, outerLow: false },
    { wall: 'left', alongX: false, laid: whole.left.laid, low: 0, outerLow: true },
  ]
  for (let k = 1; k < chambers && whole.divider !== null; k++)
    places.push({
      wall: `divider-${k}`,
      alongX: false,
      laid: whole.divider.laid,
      low: junctionAt(frame, k),
      outerLow: true,
    })
  places.push({ wall: 'right', alongX: false, laid: whole.right.laid, low: length - thickness, outerLow: false })
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
export function piecesOf(frame: Frame, place: WallPlace, laid: LaidShape): PlanPiece[] {
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
        pieces.push({ wall: place.wall, ...box, turn: alongX ? 0 : 90, kind, cut })
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
  for (let course = 1; course <= levels.count; course++) {
    const parts: string[] = []
    for (const { laid } of places) {
      const shape = laid[course - 1]
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
        const shape = place.laid[course - 1]
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
    const flags = through.get(pairKey) ?? cells(list, below < 0 ? null : (patterns[below] ?? null))
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
