import { cellsThroughOf } from './cells.ts'
import { choicesOf } from './choices.ts'
import { chooseWhole } from './choosing.ts'
import { chosenLooks, layWhole, wholeScore, type Chosen } from './whole-laying.ts'
import type { Layout, LayoutFinding, LayoutRequest } from './contract.ts'
import { countsOf, type ArchBricks } from './counting.ts'
import { withExchanges } from './exchanging.ts'
import { frameOf } from './frame.ts'
import { headFindings, placedLintels, placedOpenings } from './head-placing.ts'
import type { HeadPlan } from './heads.ts'
import { layShape, type LaidShape } from './laid-wall.ts'
import { levelsOf } from './levels.ts'
import { jointsSeen, measuredFindings } from './measuring.ts'
import { toMetres, toMicro } from './micrometres.ts'
import { pillarFindings } from './pillar-bond.ts'
import { bondLaid, rulesFor } from './rules.ts'
import { headFor, workshop, type Workshop } from './workshop.ts'
import { stampUnits, wallPlaces } from './stamping.ts'
import { extraCourse, groundOf, type ExtraCourse } from './stepped-ground.ts'
import { wallSolids } from './wall-solids.ts'

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
    request.sought ?? 'units',
  )
  return { shop, findings }
}

const JUNCTION_KINDS = 6

/** Lays the plan as a deep search chose, or else searches quickly. */
function laidWalls(request: LayoutRequest, shop: Workshop): Chosen {
  const { turned } = request
  if (turned === undefined || turned.owns.length !== JUNCTION_KINDS) return chooseWhole(shop)
  const [first = 0] = turned.owns
  // English bond turns as a whole; choices made for another bond are read so.
  const owns = shop.frame.bond === 'english' ? turned.owns.map(() => first) : turned.owns
  const bearing = { outer: toMicro(turned.bearingM.outer), inner: toMicro(turned.bearingM.inner) }
  const found = layWhole(shop, owns, bearing, chosenLooks(turned))
  const whole = withExchanges(shop, found, turned.exchanges)
  return { whole, score: wholeScore(shop, whole) }
}

/** Extra courses of a stepped footing, each laid under the one above it; for each wall from the lowest up. */
function laidUnder(shop: Workshop, { whole }: Chosen, extras: readonly ExtraCourse[]): LaidShape[][] {
  const { front, back, left, right, divider } = whole
  const crosses = Array.from({ length: shop.frame.chambers + 1 }, (_, k) =>
    k === 0 ? left : k === shop.frame.chambers ? right : (divider ?? left),
  )
  return [front, back, ...crosses].map(({ laid }, index) => {
    const under: LaidShape[] = []
    let above = laid[0]
    for (const extra of extras) {
      const shape = index === 0 ? extra.front : index === 1 ? extra.back : extra.cross[index - 2]
      if (shape === undefined) continue
      above = layShape(shape, [above?.perpends ?? []], shop.rules, shop.fill, 'any')
      under.unshift(above)
    }
    return under
  })
}

/** Bricks of the arches: whole across a one-brick wall, bats of a unit's width in a single leaf. */
function archBricks({ frame }: Workshop, { arch }: HeadPlan): ArchBricks {
  const ring = (arch?.head.voussoirs ?? 0) * frame.chambers
  const single = frame.bond === 'stretcher'
  const fitted = (arch?.fitted ?? 0) * frame.chambers
  return { whole: single ? 0 : ring, bats: single ? ring : 0, batLength: frame.unitWidth, fitted }
}

/**
 * Every unit of the plan in its place, with openings, lintels, counts and what is wrong where. Searches the junction schemes
 * for the fewest breaches, then the fewest units bought (cuts paired), then fewest cuts, fewest different cuts, greatest lap.
 */
export function layOut(request: LayoutRequest): Layout {
  const { shop, findings } = prepared(request)
  const { frame, levels, rules } = shop
  const chosen = laidWalls(request, shop)
  const { whole, score } = chosen
  const plan = headFor(shop, whole.bearing)
  const ground = groundOf(request, frame)
  const extras = Array.from({ length: ground?.most ?? 0 }, (_, i) =>
    ground === null ? [] : extraCourse(frame, ground, whole.owns, i + 1),
  ).flat()
  const flipped = ground?.flipped ?? false
  const places = wallPlaces(frame, whole, laidUnder(shop, chosen, extras), flipped)
  const stamped = stampUnits(frame, levels, places, cellsThroughOf(request.unit))
  const openings = placedOpenings(frame, levels, plan, request.opening.head)
  const lintels = placedLintels(frame, levels, plan, request.opening.head)
  const walls = wallSolids(frame, levels, extras, flipped)
  const joints = jointsSeen(places)
  const measured = measuredFindings(frame, places, rules)
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
    counts: countsOf(shop, places, archBricks(shop, plan)),
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
      ...measured,
      ...pillarFindings(frame, levels, rules, measured),
    ],
    wallVolumeM3,
    unitVolumeM3,
    mortarM3: wallVolumeM3 - unitVolumeM3 - others,
    fillableVoidM3,
    trace: {
      tried: shop.tried,
      choices: choicesOf(whole, request.turned?.thorough ?? false, request.turned?.exchanges ?? []),
      order:
        shop.sought === 'cuts'
          ? ['breaches', 'cutPieces', 'bought', 'cutLengths', 'lap']
          : ['breaches', 'bought', 'cutPieces', 'cutLengths', 'lap'],
      breaches: score.breaches,
      cutLengths: score.cutLengths,
      smallestLapM: toMetres(score.smallestLap),
      lapNeededM: toMetres(rules.along.lap),
    },
  }
}
