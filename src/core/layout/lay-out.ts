import { cellsThroughOf } from './cells.ts'
import { chooseWhole, chosenLooks, layWhole, wallsOf, wholeScore, type WholeLaid, type WholeScore } from './choosing.ts'
import type { Layout, LayoutCounts, LayoutFinding, LayoutRequest } from './contract.ts'
import { frameOf, type Frame } from './frame.ts'
import { headFindings, placedLintels, placedOpenings } from './head-placing.ts'
import { headFor, workshop, type Workshop } from './schemes.ts'
import { levelsOf } from './levels.ts'
import { lowerBound } from './lower-bound.ts'
import { jointsSeen, measuredFindings } from './measuring.ts'
import { CUT_GRID_UM, toMetres, toMicro } from './micrometres.ts'
import { pairCuts } from './pairing.ts'
import type { WallRules } from './laid-wall.ts'
import { stampUnits, wallPlaces } from './stamping.ts'
import { wallSolids } from './wall-solids.ts'

/** The bond that can be laid: English bond needs a unit as long as two widths and a joint. */
function bondLaid(request: LayoutRequest): {
  readonly bond: LayoutRequest['bond']
  readonly findings: LayoutFinding[]
} {
  const { bond, leaf, unit, perpend } = request
  const wanted = leaf === 'single' ? 'stretcher' : bond === 'stretcher' ? 'english' : bond
  const between = unit.lengthM - 2 * unit.widthM
  const fits = between >= perpend.minM - 1e-6 && between <= perpend.maxM + 1e-6
  const laidAs = wanted === 'english' && !fits ? 'header' : wanted
  return { bond: laidAs, findings: laidAs === bond ? [] : [{ kind: 'bond-unsuitable', bond, laidAs }] }
}

/**
 * Laps and pieces of at least a quarter of the unit's length (New Mexico Administrative Code 14.7.4.11 asks a quarter lap of
 * adobe; general practice elsewhere), half aimed at. Across a one-brick wall the smallest piece is a queen closer.
 */
function rulesFor(request: LayoutRequest, frame: Frame): WallRules {
  const { unitLength, unitWidth, jointUsual } = frame
  const loss = toMicro(request.cutLossM)
  const trim = Math.max(loss, CUT_GRID_UM)
  const joints = { jointMin: toMicro(request.perpend.minM), jointUsual, jointMax: toMicro(request.perpend.maxM) }
  const lap = unitLength / 4
  const halfModule = (unitWidth + jointUsual) / 2
  return {
    along: {
      length: unitLength,
      shortest: lap,
      grid: CUT_GRID_UM,
      fine: frame.bond === 'english' ? 1000 : CUT_GRID_UM,
      coarse: 5 * CUT_GRID_UM,
      goodCuts: goodCuts(unitLength, lap, loss),
      trim,
      loss,
      lap,
      aim: (unitLength + jointUsual) / 2,
      ...joints,
    },
    across: {
      length: unitWidth,
      shortest: Math.trunc(unitWidth - halfModule),
      grid: Math.trunc(halfModule / 2),
      fine: 1000,
      coarse: Math.trunc(halfModule / 2),
      goodCuts: [],
      trim,
      loss,
      lap,
      aim: halfModule,
      ...joints,
    },
  }
}

/** Cuts on the grid that leave the longest piece of which a unit gives two, or three. */
const goodCuts = (length: number, shortest: number, loss: number): number[] =>
  [2, 3]
    .map((share) => (length + loss) / share - loss)
    .filter((piece) => piece >= shortest)
    .map((piece) => length - Math.trunc(piece / CUT_GRID_UM) * CUT_GRID_UM)

/** The request as the search sees it; a request out of its limits is mended here and said so. */
export function prepared(request: LayoutRequest): { readonly shop: Workshop; readonly findings: LayoutFinding[] } {
  const { bond, findings } = bondLaid(request)
  const asked = frameOf(request, bond)
  const opening = Math.min(asked.opening, asked.clear)
  // An even remainder puts the opening in the middle to the micrometre.
  const frame = { ...asked, opening: opening - ((asked.clear - opening) % 2) }
  if (opening < asked.opening)
    findings.push({ kind: 'opening-too-wide', widthM: request.opening.widthM, widestM: request.clearSideM })
  const shop = workshop(
    frame,
    levelsOf(request.courses),
    rulesFor(request, frame),
    request.opening.head,
    toMicro(request.cutLossM),
  )
  return { shop, findings }
}

function countsOf(shop: Workshop, whole: WholeLaid, arches: number): LayoutCounts {
  const { frame, loss } = shop
  const walls = wallsOf(whole, frame.chambers)
  const across = new Map<number, number>()
  const along = new Map<number, number>()
  let full = 0
  for (const [{ score }, times] of walls) {
    full += score.whole * times
    for (const [length, count] of score.across) across.set(length, (across.get(length) ?? 0) + count * times)
    for (const [length, count] of score.along) along.set(length, (along.get(length) ?? 0) + count * times)
  }
  const ways = [
    { way: 'across' as const, pieces: across, pairing: pairCuts(across, frame.unitLength, loss) },
    { way: 'along' as const, pieces: along, pairing: pairCuts(along, frame.unitWidth, loss) },
  ]
  const cuts = ways.flatMap(({ way, pieces }) =>
    [...pieces].sort(([a], [b]) => b - a).map(([length, count]) => ({ lengthM: toMetres(length), count, way })),
  )
  const cutPieces = cuts.reduce((sum, { count }) => sum + count, 0)
  const cutStock = ways.reduce((sum, { pairing }) => sum + pairing.units, 0)
  const bought = full + cutStock + arches
  const bound = lowerBound(
    walls.map(([{ laid }, times]) => [laid, times] as const),
    shop.rules,
    loss,
  )
  return {
    laid: full + cutPieces + arches,
    whole: full + arches,
    cuts,
    cutPieces,
    cutPatterns: ways.flatMap(({ way, pairing }) =>
      pairing.patterns.map(({ pieces, units }) => ({ way, piecesM: pieces.map(toMetres), units })),
    ),
    bought,
    savedByPairing: cutPieces - cutStock,
    lowerBound: bound + arches,
    gap: bought === 0 ? 0 : (bought - bound - arches) / bought,
  }
}

/** Lays the plan as a deep search chose, or else searches quickly. */
function laidWalls(request: LayoutRequest, shop: Workshop): { readonly whole: WholeLaid; readonly score: WholeScore } {
  const { turned } = request
  if (turned === undefined) return chooseWhole(shop)
  const bearing = { outer: toMicro(turned.bearingM.outer), inner: toMicro(turned.bearingM.inner) }
  const whole = layWhole(shop, turned.owns, bearing, chosenLooks(turned))
  return { whole, score: wholeScore(shop, whole) }
}

/**
 * Every unit of the plan in its place, with openings, lintels, counts and what is wrong where. Searches the junction schemes
 * for the fewest breaches, then the fewest units bought (cuts paired), then fewest cuts, fewest different cuts, greatest lap.
 */
export function layOut(request: LayoutRequest): Layout {
  const { shop, findings } = prepared(request)
  const { frame, levels, rules } = shop
  const { whole, score } = laidWalls(request, shop)
  const plan = headFor(shop, whole.bearing)
  const places = wallPlaces(frame, whole)
  const stamped = stampUnits(frame, levels, places, cellsThroughOf(request.unit))
  const openings = placedOpenings(frame, levels, plan, request.opening.head)
  const lintels = placedLintels(frame, levels, plan, request.opening.head)
  const walls = wallSolids(frame, levels)
  const joints = jointsSeen(places)
  const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)
  const wallVolumeM3 = sum(walls.map(({ dxM, dyM, dzM }) => dxM * dyM * dzM))
  const planAreas = stamped.patterns.map((pieces) => sum(pieces.map(({ dx, dy }) => toMetres(dx) * toMetres(dy))))
  const heightM = toMetres(levels.unitHeight)
  const unitVolumeM3 = sum(stamped.courses.map(({ pattern }) => (planAreas[pattern] ?? 0) * heightM))
  const others = sum(lintels.map(({ volumeM3 }) => volumeM3)) + sum(openings.map(({ volumeM3 }) => volumeM3))
  let fillableVoidM3 = 0
  for (const { cellsOpen } of stamped.units)
    for (const [index, open] of cellsOpen.entries()) {
      const cell = request.unit.cells[index]
      if (open && cell !== undefined) fillableVoidM3 += cell.lengthM * cell.widthM * heightM
    }
  return {
    lengthM: toMetres(frame.length),
    depthM: toMetres(frame.depth),
    thicknessM: toMetres(frame.thickness),
    bond: frame.bond,
    courses: stamped.courses,
    units: stamped.units,
    lintels,
    openings,
    walls,
    counts: countsOf(shop, whole, 0),
    joints: {
      bedM: toMetres(levels.bed),
      perpendMinM: toMetres(joints.count === 0 ? 0 : joints.smallest),
      perpendMaxM: toMetres(joints.largest),
      perpends: joints.count,
    },
    findings: [
      ...findings,
      ...plan.findings,
      ...headFindings(frame, plan, request.opening.head),
      ...measuredFindings(frame, places, rules),
    ],
    wallVolumeM3,
    unitVolumeM3,
    mortarM3: wallVolumeM3 - unitVolumeM3 - others,
    fillableVoidM3,
    trace: {
      tried: shop.tried,
      choices: choicesOf(whole),
      order: ['breaches', 'bought', 'cutPieces', 'cutLengths', 'lap'],
      breaches: score.breaches,
      cutLengths: score.cutLengths,
      smallestLapM: toMetres(score.smallestLap),
      lapNeededM: toMetres(rules.along.lap),
    },
  }
}

const parity = (start: number): 0 | 1 => (start === 1 ? 1 : 0)

const choicesOf = (whole: WholeLaid): Layout['trace']['choices'] => ({
  owns: whole.owns,
  cutPlaces: {
    front: whole.front.place,
    back: whole.back.place,
    left: whole.left.place,
    right: whole.right.place,
    divider: whole.divider?.place ?? 'any',
  },
  starts: {
    back: parity(whole.back.start),
    left: parity(whole.left.start),
    right: parity(whole.right.start),
    divider: parity(whole.divider?.start ?? 0),
  },
  bearingM: { outer: toMetres(whole.bearing.outer), inner: toMetres(whole.bearing.inner) },
})
