import { SAME_LENGTH_M, wholeModulesIn } from '../basics/count.ts'
import { findingsOn, type Finding, type FindingArg, type Remedy } from '../basics/finding.ts'
import { LIMITS } from '../plan/limits.ts'
import type { Plan } from '../plan/schema.ts'
import { BEND_OF_SPAN, battensForSag, SAG_OF_RAIL } from './tray-strength.ts'
import type { TrayFrame } from './tray-frame.ts'
import { fishPerTray } from './tray-load.ts'
import { trayMass } from './tray-mass.ts'
import { clearSideRemedy, downToMm, handleRemedy, LEAST_HANDLE_M } from './tray-remedies.ts'
import { traySizes } from './tray-sizes.ts'

/** Rails keep at least this far back from the fire face. Common practice. */
const LEAST_SETBACK_M = 0.01
/** Setback to aim for where the wall has room. Common practice. */
const USUAL_SETBACK_M = 0.03
/** The frame ends at least this far inside the outer face of the wall. Common practice. */
const LEAST_EDGE_M = 0.01
/** Clear between the handles of neighbouring trays for a hand in a glove to close around one. Common practice. */
const LEAST_HAND_M = 0.04
/** Trays in a stack beyond which it is told: FAO field reports have 4–5, 8 and at most 15. */
export const TALL_STACK = 12
/** The most trays that a stack may have, by the same reports. */
export const TALLEST_STACK = 15
/** Loads are not lifted above the shoulder: about this high over the ground. From memory. */
const SHOULDER_M = 1.4
/** Two people at arm's length and waist height: two thirds of twice 25 kg. From memory. */
const TWO_PERSON_KG = 33

/** Mesh on the rail that a row of staples holds, and what is usual. Common practice. */
const LEAST_MESH_LAP_M = 0.01
const USUAL_MESH_LAP_M = 0.02

const MILLIMETRE = 0.001
const CENTIMETRE = 0.01
const TENTH_MM = 0.0001
const metres = (value: number): FindingArg => ({ value, unit: 'm' })
const kilograms = (value: number): FindingArg => ({ value, unit: 'kg' })

type Measured = Omit<TrayFrame, 'findings'>

const finding = findingsOn('trays')

/** Largest bearing m + r that the walls allow, m: the outer wall's edge, and on a shared wall half of what the gap leaves. */
function roomForBearingM(
  { chambers, trays }: Plan,
  wallM: number,
): { readonly outerM: number; readonly sharedM: number } {
  return {
    outerM: wallM - LEAST_EDGE_M,
    sharedM: chambers.count > 1 ? (wallM - trays.gapM) / 2 : Number.POSITIVE_INFINITY,
  }
}

/** Everything about the trays that is wrong, needs care, or was checked and holds. */
export function trayFindings(plan: Plan, frame: Measured): Finding[] {
  const seating = seatingFindings(plan, frame)
  return [
    ...seating,
    ...stackFindings(plan, frame),
    ...meshFindings(plan),
    ...strengthFindings(plan, frame),
    ...massFindings(plan, frame),
  ]
}

function seatingFindings(plan: Plan, frame: Measured): Finding[] {
  const { setbackM, railThicknessM, handleM, gapM } = plan.trays
  const found: Finding[] = []
  const room = roomForBearingM(plan, frame.wall.value)
  const roomM = Math.min(room.outerM, room.sharedM)
  const bearingM = frame.bearing.value
  const fits = fittingRemedies(roomM, railThicknessM)
  if (setbackM < LEAST_SETBACK_M - SAME_LENGTH_M)
    found.push(
      finding(
        'problem',
        setbackM <= 0 ? 'rail-over-fire' : 'rail-near-fire',
        { setback: metres(setbackM), least: metres(LEAST_SETBACK_M) },
        fits,
      ),
    )
  if (bearingM > room.outerM + SAME_LENGTH_M)
    found.push(
      finding('problem', 'tray-over-edge', { by: metres(bearingM - room.outerM), edge: metres(LEAST_EDGE_M) }, fits),
    )
  if (bearingM > room.sharedM + SAME_LENGTH_M)
    found.push(
      finding(
        'problem',
        'trays-clash',
        { by: metres(2 * (bearingM - room.sharedM)), wall: metres(frame.wall.value), gap: metres(gapM) },
        fits,
      ),
    )
  const apartM = frame.wall.value - 2 * bearingM
  if (plan.chambers.count > 1 && bearingM <= roomM + SAME_LENGTH_M && apartM < LEAST_HAND_M - SAME_LENGTH_M)
    found.push(
      finding(
        'caution',
        'handles-close',
        { apart: metres(apartM), least: metres(LEAST_HAND_M) },
        fittingRemedies((frame.wall.value - LEAST_HAND_M) / 2, railThicknessM),
      ),
    )
  const insideM = frame.wall.value - bearingM - handleM
  const wantedM = downToMm(frame.wall.value - bearingM + 0.02 + MILLIMETRE / 2)
  const longer = handleRemedy(Math.max(wantedM, 0.12))
  if (handleM < LEAST_HANDLE_M - SAME_LENGTH_M)
    found.push(finding('caution', 'handle-short', { handle: metres(handleM), least: metres(LEAST_HANDLE_M) }, longer))
  else if (insideM > SAME_LENGTH_M) found.push(finding('caution', 'handle-inside', { by: metres(insideM) }, longer))
  if (found.length === 0)
    found.push(finding('good', 'trays-seat', { bearing: metres(bearingM), setback: metres(setbackM) }))
  return found
}

/** The usual setback if the wall has room, else what it has; else a thinner rail. */
function fittingRemedies(roomM: number, railM: number): Remedy[] {
  const setbackM = downToMm(Math.min(USUAL_SETBACK_M, roomM - railM))
  if (setbackM >= LEAST_SETBACK_M)
    return [{ kind: 'set-setback', args: { setback: metres(setbackM) }, set: { 'trays.setbackM': setbackM } }]
  const thinM = downToMm(roomM - LEAST_SETBACK_M)
  if (thinM < LIMITS['trays.railThicknessM'].min) return []
  return [
    {
      kind: 'set-rail-and-setback',
      args: { rail: metres(thinM), setback: metres(LEAST_SETBACK_M) },
      set: { 'trays.railThicknessM': thinM, 'trays.setbackM': LEAST_SETBACK_M },
    },
  ]
}

function stackFindings(plan: Plan, frame: Measured): Finding[] {
  const found: Finding[] = []
  const trays = plan.trays.perChamber
  const lower = (most: number): Remedy[] =>
    most >= 1 ? [{ kind: 'set-per-chamber', args: { trays: most }, set: { 'trays.perChamber': most } }] : []
  if (trays > TALLEST_STACK)
    found.push(finding('problem', 'stack-too-tall', { trays, most: TALLEST_STACK }, lower(TALLEST_STACK)))
  else if (trays > TALL_STACK)
    found.push(finding('caution', 'stack-tall', { trays, usual: 8, most: TALL_STACK }, lower(TALL_STACK)))
  const topM = frame.topHeight.value
  if (topM > SHOULDER_M + SAME_LENGTH_M)
    found.push(
      finding(
        'caution',
        'stack-over-shoulder',
        { top: metres(topM), shoulder: metres(SHOULDER_M) },
        lower(wholeModulesIn(SHOULDER_M - plan.walls.aboveM, frame.rail.depth.value)),
      ),
    )
  return found
}

function strengthFindings(plan: Plan, frame: Measured): Finding[] {
  const found: Finding[] = []
  const { meshSag, battenSag, railSag, span } = frame.strength
  const allowedM = SAG_OF_RAIL * frame.rail.depth.value
  if (meshSag.value > allowedM) {
    found.push(
      finding(
        'caution',
        'mesh-sags',
        { sag: metres(meshSag.value), allowed: metres(allowedM), span: metres(span.value) },
        sagRemedies(plan, meshSag.value, allowedM),
      ),
    )
  }
  const bend = (kind: string, sagM: number, spanM: number) => {
    const most = spanM * BEND_OF_SPAN
    if (sagM <= most) return
    // Sag falls with the cube of the depth, less what a deeper rail weighs more: with the square at least.
    const deeperM = wholeModulesIn(frame.rail.depth.value * Math.sqrt(sagM / most) + 0.005, 0.005) * 0.005
    const deeper: Remedy[] =
      deeperM > LIMITS['trays.railDepthM'].max
        ? []
        : [{ kind: 'set-rail-depth', args: { depth: metres(deeperM) }, set: { 'trays.railDepthM': deeperM } }]
    found.push(finding('caution', kind, { sag: metres(sagM), allowed: metres(most) }, deeper))
  }
  if (plan.trays.battens > 0) bend('batten-bends', battenSag.value, frame.inner.value)
  bend('rail-bends', railSag.value, frame.side.value)
  return found
}

/** More battens, or a stouter wire: under the same load a wire sags with the fourth power of its thinness. */
function sagRemedies({ trays }: Plan, sagM: number, allowedM: number): Remedy[] {
  const battens = battensForSag(sagM, allowedM, trays.battens, LIMITS['trays.battens'].max)
  const wireM = wholeModulesIn(trays.meshWireM * Math.sqrt(Math.sqrt(sagM / allowedM)) + TENTH_MM, TENTH_MM) * TENTH_MM
  return [
    ...(battens === null ? [] : [{ kind: 'set-battens', args: { battens }, set: { 'trays.battens': battens } }]),
    ...(wireM > LIMITS['trays.meshWireM'].max
      ? []
      : [{ kind: 'set-mesh-wire', args: { wire: metres(wireM) }, set: { 'trays.meshWireM': wireM } }]),
  ]
}

/** Mesh lies on the rails wide enough to be stapled, and ends on them: cut wire beyond the frame tears hands. */
function meshFindings({ trays: { meshLapM, railThicknessM } }: Plan): Finding[] {
  const lapOf = (lapM: number): Remedy[] => [
    { kind: 'set-mesh-lap', args: { lap: metres(lapM) }, set: { 'trays.meshLapM': lapM } },
  ]
  if (meshLapM < LEAST_MESH_LAP_M - SAME_LENGTH_M)
    return [
      finding(
        'caution',
        'mesh-lap-short',
        { lap: metres(meshLapM), least: metres(LEAST_MESH_LAP_M) },
        lapOf(downToMm(Math.min(USUAL_MESH_LAP_M, railThicknessM))),
      ),
    ]
  if (meshLapM > railThicknessM + SAME_LENGTH_M)
    return [
      finding('caution', 'mesh-lap-over', { by: metres(meshLapM - railThicknessM) }, lapOf(downToMm(railThicknessM))),
    ]
  return []
}

function massFindings(plan: Plan, frame: Measured): Finding[] {
  const { mass } = frame
  const loaded = kilograms(mass.loaded.value)
  return mass.loaded.value > TWO_PERSON_KG
    ? [
        finding('problem', 'tray-too-heavy', { mass: loaded, most: kilograms(TWO_PERSON_KG) }, [
          ...lighterLoad(plan, frame),
          ...smallerTray(plan),
        ]),
      ]
    : [finding('caution', 'tray-needs-two', { mass: loaded })]
}

/** The load that two people still carry, in the plan's own way of loading. */
function lighterLoad({ catch: { loading } }: Plan, { mass, inner }: Measured): Remedy[] {
  const fishKg = TWO_PERSON_KG - mass.empty.value
  const field = loading === 'packed' ? 'catch.loadKgPerTray' : 'catch.loadKgPerM2'
  const load = wholeModulesIn(loading === 'packed' ? fishKg : fishKg / inner.value ** 2, 0.1) / 10
  if (load < LIMITS[field].min) return []
  return [{ kind: 'set-load', args: { load: kilograms(load) }, set: { [field]: load } }]
}

/** The widest chamber, in whole centimetres, whose loaded tray two people carry. */
function smallerTray(plan: Plan): Remedy[] {
  const isLight = (sideM: number): boolean => {
    const narrow = { ...plan, chambers: { ...plan.chambers, clearSideM: sideM } }
    const sizes = traySizes(narrow)
    return trayMass(narrow, sizes, fishPerTray(narrow, sizes)).loaded.value <= TWO_PERSON_KG
  }
  const { min } = LIMITS['chambers.clearSideM']
  let light = wholeModulesIn(min, CENTIMETRE)
  let heavy = wholeModulesIn(plan.chambers.clearSideM, CENTIMETRE) + 1
  if (!isLight(min)) return []
  while (heavy - light > 1) {
    const middle = wholeModulesIn(light + heavy, 2)
    if (isLight(middle / 100)) light = middle
    else heavy = middle
  }
  return clearSideRemedy(light / 100)
}
