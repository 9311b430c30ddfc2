import { lotsFor, modulesToCover, wholeNear } from '../basics/count.ts'
import { findingsOn, type Finding, type Remedy } from '../basics/finding.ts'
import { CATALOGUE_SOILS, soilOf } from '../plan/catalogue.ts'
import { LIMITS } from '../plan/limits.ts'
import type { Plan } from '../plan/schema.ts'
import type { Foundation } from './foundation.ts'
import { SURFACE_FALL } from './earthworks.ts'
import { highestGround, steepness } from './ground-plane.ts'
import type { KilnGeometry } from './kiln.ts'
import { batteredDig } from './pit.ts'
import { areaOf } from './shape.ts'
import { slopeByPegs, slopeReadings } from './slope-by-pegs.ts'

const metres = (value: number) => ({ value, unit: 'm' as const })

const onGround = findingsOn('ground')
const finding: typeof onGround = (level, kind, ...more) => onGround(level, `ground.${kind}`, ...more)

const remedy = (kind: string, args: Remedy['args'], set: Remedy['set']): Remedy => ({
  kind: `ground.${kind}`,
  args,
  set,
})

/** Steeper ground is cut into a level terrace before a kiln stands on it. */
const STEEPEST = 0.25
/** Free height above a flood: IRC R322.2. */
const FLOOD_FREEBOARD_M = 0.3
/** The ground falls away over the first 3 m, IRC R401.3. */
const SURFACE_FALL_OVER_M = 3
/** Ground higher than the hearth by more sends rain into it. */
const NOTICED_RISE_M = 0.05
/** Typed sizes go in whole centimetres, up. */
const upToCm = (lengthM: number): number => modulesToCover(lengthM, 0.01) / 100

/** What the user should know of soil, footing, slope and water. */
export const groundFindings = (plan: Plan, geometry: KilnGeometry, foundation: Foundation): Finding[] => [
  ...soilFindings(plan),
  ...footingFindings(plan, geometry, foundation),
  ...slopeFindings(plan, geometry),
  ...waterFindings(plan, geometry),
  ...digFindings(plan, geometry),
]

function soilFindings({ ground }: Plan): Finding[] {
  if (!CATALOGUE_SOILS.some((soil) => soil.key === ground.soil)) return [finding('problem', 'soil-unknown')]
  return soilOf(ground.soil).build ? [] : [finding('problem', 'not-to-build')]
}

function footingFindings(
  plan: Plan,
  { footing }: KilnGeometry,
  { pressure, bearing, neededProjection, neededThickness }: Foundation,
): Finding[] {
  if (!soilOf(plan.ground.soil).build) return []
  const findings: Finding[] = []
  const projection = footing.projection.value
  const thickness = footing.thickness.value
  if (neededProjection === null) return [finding('problem', 'too-weak')]
  const narrow = neededProjection.value > projection + 1e-9
  const thin = neededThickness.value > thickness + 1e-9
  if (narrow) {
    const to = upToCm(neededProjection.value)
    const fits = to <= LIMITS['ground.projectionM'].max
    const set = {
      'ground.projectionM': to,
      'ground.thicknessM': Math.max(thickness, upToCm(Math.max(to, neededThickness.value))),
    }
    const args = {
      projection: metres(projection),
      needed: metres(neededProjection.value),
      pressure: wholeNear(pressure.value / 1000),
      bearing: wholeNear(bearing.value / 1000),
    }
    findings.push(
      finding(
        'problem',
        'footing-narrow',
        args,
        fits ? [remedy('widen-footing', { projection: metres(to) }, set)] : [],
      ),
    )
  }
  if (thin) {
    const to = upToCm(neededThickness.value)
    const remedies = [remedy('thicken-footing', { thickness: metres(to) }, { 'ground.thicknessM': to })]
    const less = Math.min(projection, thickness)
    if (!narrow && neededProjection.value <= less && less < projection)
      remedies.push(remedy('narrow-footing', { projection: metres(less) }, { 'ground.projectionM': less }))
    findings.push(
      finding(
        'problem',
        'footing-thin',
        { thickness: metres(thickness), needed: metres(neededThickness.value) },
        remedies,
      ),
    )
  }
  if (!narrow && !thin) {
    const share = wholeNear((pressure.value / bearing.value) * 100)
    findings.push(finding('good', 'footing-holds', { share }))
  }
  if (plan.ground.footing === 'strip' && footing.kind === 'pad') findings.push(finding('caution', 'strips-meet'))
  return findings
}

/** A slope read at pegs that is too steep for the plan to take; 0 where none is. */
function steepnessRead({ ground }: Plan): number {
  const readings = slopeReadings(ground)
  const read = readings === null ? null : slopeByPegs(readings)
  const tooSteep = read?.ok === false ? read.problems.find((problem) => problem.kind === 'terrace-first') : undefined
  return tooSteep?.slope ?? 0
}

function slopeFindings(plan: Plan, { ground, outside, footing }: KilnGeometry): Finding[] {
  const findings: Finding[] = []
  const steep = Math.max(steepness(ground), steepnessRead(plan))
  if (steep > STEEPEST) findings.push(finding('problem', 'terrace-first', { slope: wholeNear(steep * 100) }))
  const { refused } = footing.steps
  if (refused !== null) {
    const level = remedy('level-formation', {}, { 'ground.formation': 'level' })
    const gauge = upToCm(footing.gauge.value)
    const thicken = remedy('thicken-footing', { thickness: metres(gauge) }, { 'ground.thicknessM': gauge })
    const fits = refused === 'course-thicker-than-footing' && gauge <= LIMITS['ground.thicknessM'].max
    findings.push(
      finding('caution', `steps-${refused}`, { gauge: metres(footing.gauge.value) }, fits ? [level, thicken] : [level]),
    )
  }
  const lowest = Math.max(...footing.beds.map((bed) => -bed.step))
  if (lowest > 0) findings.push(finding('caution', 'extra-courses', { courses: lowest }))
  const above = highestGround(ground, outside)
  if (above > NOTICED_RISE_M) findings.push(finding('caution', 'hearth-below-ground', { rise: metres(above) }))
  return findings
}

function waterFindings({ ground }: Plan, geometry: KilnGeometry): Finding[] {
  const findings: Finding[] = []
  const { floodM, waterTableM } = ground
  if (floodM !== null && floodM + FLOOD_FREEBOARD_M > 0)
    findings.push(
      finding('problem', 'below-flood', {
        raise: metres(floodM + FLOOD_FREEBOARD_M),
        spare: metres(FLOOD_FREEBOARD_M),
      }),
    )
  const deepest = -Math.min(...geometry.footing.beds.map((bed) => bed.formationM))
  if (waterTableM !== null && waterTableM < deepest)
    findings.push(finding('problem', 'trench-floods', { water: metres(waterTableM), dig: metres(deepest) }))
  if (ground.rain === 'toward')
    findings.push(
      finding('caution', 'rain-toward', {
        fall: metres(SURFACE_FALL * SURFACE_FALL_OVER_M),
        over: metres(SURFACE_FALL_OVER_M),
      }),
    )
  return findings
}

function digFindings({ ground }: Plan, { footing, earthworks, levels }: KilnGeometry): Finding[] {
  const findings: Finding[] = []
  if (ground.hearthM > levels.belowM && ground.hearthM > 0)
    findings.push(
      finding('problem', 'hearth-over-footing', { hearth: metres(ground.hearthM), below: metres(levels.belowM) }, [
        remedy('thin-hearth', { hearth: metres(levels.belowM) }, { 'ground.hearthM': levels.belowM }),
      ]),
    )
  if (ground.soil === 'sand-loose') {
    const more = batteredDig(footing.shape, footing.depth.value) - areaOf(footing.shape) * footing.depth.value
    findings.push(
      finding('caution', 'sides-slump', { barrows: lotsFor(more * soilOf(ground.soil).loose, ground.barrowM3) }),
    )
  }
  const short = -earthworks.surplus.value
  if (short > 0) findings.push(finding('caution', 'soil-short', { pans: lotsFor(short, ground.panM3) }))
  return findings
}
