import type { Plan } from '../plan/schema.ts'
import { firingHours } from '../fish/timetable.ts'
import { conduct, type Conducted, type HeatMoment, type HeatPhase } from './conduct.ts'
import { HEAT_DATA } from './heat-data.ts'
import type { Slab } from './slab.ts'
import { outerWall, sharedWall, type Filling } from './wall-section.ts'

/** One firing's heat through a square metre of a wall, J/m². */
export interface FaceHeat {
  /** Given by the fire while it burns. */
  readonly drawnJm2: number
  /** Gone through the outer face while it burns. */
  readonly lostJm2: number
  /** Left in the wall when the fire ends, over what it held when the fire was lit. */
  readonly storedJm2: number
  /** Given back into the chamber after the fire, until the next one: of use while fish is still over it. */
  readonly returnedJm2: number
  readonly peakOutsideDegC: number
  readonly peakOutsideHours: number
}

export interface WallHeat {
  readonly filling: Filling
  /** From cold, and once firings have followed each other at the plan's rate until each is like the last. */
  readonly outer: { readonly cold: FaceHeat; readonly repeated: FaceHeat; readonly firingsToSettle: number }
  /** Half a dividing wall, as one chamber sees it. */
  readonly shared: { readonly cold: FaceHeat; readonly repeated: FaceHeat }
}

const DAY_HOURS = 24
const MOST_FIRINGS = 12
const SETTLED = 0.002
const MOMENT_S = 600
const COOLING_STEP_S = 300

/** The stages of one firing as the wall sees them. `hotterK` is how much hotter the gas in the chamber is than where it meets the fish. */
export function firingPhases({ firing }: Plan, hotterK: number): HeatPhase[] {
  const insideFilmWm2K = HEAT_DATA.films.inside
  const dryHours = firing.dryHours
  const cookHours = firingHours({ firing }) - dryHours
  return [
    { hours: cookHours, gasDegC: firing.cookDegC + hotterK, insideFilmWm2K },
    ...(dryHours > 0 ? [{ hours: dryHours, gasDegC: firing.dryDegC + hotterK, insideFilmWm2K }] : []),
  ]
}

/** The fire is out: the chamber stands open to the air until the next firing. */
export function coolingPhase(plan: Plan): HeatPhase[] {
  const hours = DAY_HOURS / plan.catch.firingsPerDay - firingHours(plan)
  const { airDegC } = plan.firing
  return hours > 0.01 ? [{ hours, gasDegC: airDegC, insideFilmWm2K: HEAT_DATA.films.insideCooling }] : []
}

const asFace = (run: Conducted, cooled: Conducted | null): FaceHeat => ({
  drawnJm2: run.inJm2,
  lostJm2: run.outJm2,
  storedJm2: run.storedJm2,
  returnedJm2: cooled === null ? 0 : -cooled.inJm2,
  peakOutsideDegC: run.peakOutsideDegC,
  peakOutsideHours: run.peakOutsideHours,
})

/** Firing after firing until the heat drawn changes by less than two thousandths. */
function repeatedly(plan: Plan, slab: Slab, hotterK: number) {
  const airDegC = plan.firing.airDegC
  const phases = firingPhases(plan, hotterK)
  const cooling = coolingPhase(plan)
  const coolAfter = (run: Conducted) =>
    cooling.length === 0 ? null : conduct(slab, cooling, { airDegC, start: run.temperatures, stepS: COOLING_STEP_S })
  const cold = conduct(slab, phases, { airDegC, start: airDegC })
  const coldCooled = coolAfter(cold)
  let run = cold
  let cooled = coldCooled
  let firings = 1
  while (firings < MOST_FIRINGS) {
    const next = conduct(slab, phases, { airDegC, start: (cooled ?? run).temperatures })
    firings++
    const settled = Math.abs(next.inJm2 - run.inJm2) <= SETTLED * Math.abs(run.inJm2)
    run = next
    cooled = coolAfter(run)
    if (settled) break
  }
  return { cold: asFace(cold, coldCooled), repeated: asFace(run, cooled), firingsToSettle: firings }
}

/** Heat that the walls take in a firing, for one filling of their hollows. */
export function wallHeat(plan: Plan, filling: Filling, hotterK: number): WallHeat {
  const { cold, repeated } = repeatedly(plan, sharedWall(plan, filling), hotterK)
  return { filling, outer: repeatedly(plan, outerWall(plan, filling), hotterK), shared: { cold, repeated } }
}

/** Faces of the outer wall through one cold firing and the cooling after it, every ten minutes, for the chart. */
export function wallMoments(plan: Plan, filling: Filling, hotterK: number): readonly HeatMoment[] {
  const { airDegC } = plan.firing
  const phases = [...firingPhases(plan, hotterK), ...coolingPhase(plan)]
  return conduct(outerWall(plan, filling), phases, { airDegC, start: airDegC, everyS: MOMENT_S }).moments
}
