import type { Finding } from './basics/finding.ts'
import { costs, type Costs } from './costs/costs.ts'
import { totals, type Totals } from './costs/totals.ts'
import { materialsList, type MaterialsList } from './documents/materials-list.ts'
import { fishLoad, type FishLoad } from './fish/load.ts'
import { trayFrame, type TrayFrame } from './fish/tray-frame.ts'
import { kilnGeometry, type KilnGeometry } from './geometry/kiln.ts'
import { siteOf, type Site } from './geometry/site.ts'
import { asBuilt, type AsBuilt } from './layout/as-built.ts'
import { asBuiltFindings } from './layout/as-built-findings.ts'
import type { Layout } from './layout/contract.ts'
import { layOut } from './layout/lay-out.ts'
import { layoutFindings } from './layout/layout-findings.ts'
import { coursingOf, layoutRequest, levelsFrom, type Coursing } from './layout/layout-request.ts'
import type { Plan } from './plan/schema.ts'
import type { CuttingEffort } from './purchase/cut-memory.ts'
import { purchase, type Purchase } from './purchase/purchase.ts'
import { brokenNeeds } from './quantities/broken-needs.ts'
import { masonryNeeds } from './quantities/masonry-needs.ts'
import type { Need } from './quantities/need.ts'
import { shelterNeeds } from './quantities/shelter-needs.ts'
import { trayNeeds } from './quantities/tray-needs.ts'
import { labourNeeds } from './schedule/labour-needs.ts'
import { schedule, type Schedule } from './schedule/schedule.ts'
import { buildTasks } from './schedule/tasks.ts'

/** The masonry alone: what follows from walls, openings and ground, whatever trays stand on it. */
export interface Masonry {
  readonly coursing: Coursing
  readonly geometry: KilnGeometry
  readonly layout: Layout
  readonly needs: readonly Need[]
}

/** A kiln worked out as far as its money. */
export interface Kiln extends Masonry {
  readonly plan: Plan
  readonly tray: TrayFrame
  readonly fish: FishLoad
  readonly site: Site
  readonly schedule: Schedule
  /** Courses as measured on the site, and the rest planned again from there. */
  readonly asBuilt: AsBuilt
  readonly purchase: Purchase
  readonly costs: Totals
}

/** Everything that follows from a plan. Screens and sheets read it and compute nothing themselves. */
export interface WorkedOut extends Kiln {
  readonly costs: Costs
  readonly list: MaterialsList
  readonly findings: readonly Finding[]
}

/**
 * The whole calculation, stage after stage; each is a pure function of the ones before. `masonryFor` may be one that remembers: a new price or
 * tray then lays no unit anew. An `effort` with a memory cuts no job anew either.
 */
export function workOut(
  plan: Plan,
  masonryFor: (plan: Plan) => Masonry = masonryOf,
  effort?: CuttingEffort,
): WorkedOut {
  const kiln = kilnOn(masonryFor(plan), plan, effort)
  const money = costs(kiln.costs, kiln.purchase.lines)
  return { ...kiln, costs: money, list: materialsList(kiln.purchase, money), findings: findingsOf(kiln) }
}

/** Plan to courses, geometry, every unit in its place, and what masonry takes. */
export function masonryOf(plan: Plan): Masonry {
  const coursing = coursingOf(plan)
  const geometry = kilnGeometry(plan, levelsFrom(coursing))
  const layout = layOut(layoutRequest(plan, coursing, geometry))
  return { coursing, geometry, layout, needs: masonryNeeds(plan, geometry, layout) }
}

/** Parts of a plan that no masonry follows from. */
export const APART_FROM_MASONRY: ReadonlySet<string> = new Set<keyof Plan>([
  'name',
  'example',
  'show',
  'currency',
  'catch',
  'trays',
  'place',
  'firing',
  'build',
  'built',
  'run',
  'offers',
  'spending',
  'members',
  'contributions',
  'payouts',
  'money',
])

/** A `masonryOf` that keeps the last few it made and gives the same again while nothing has changed that masonry follows from. */
export function rememberingMasonry(most = 4): (plan: Plan) => Masonry {
  const kept = new Map<string, Masonry>()
  return (plan) => {
    const name = JSON.stringify(Object.entries(plan).filter(([part]) => !APART_FROM_MASONRY.has(part)))
    const known = kept.get(name)
    const masonry = known ?? masonryOf(plan)
    kept.delete(name)
    kept.set(name, masonry)
    for (const oldest of kept.keys()) {
      if (kept.size <= most) break
      kept.delete(oldest)
    }
    return masonry
  }
}

/** Masonry to trays, days, whole lots and money. The plan is that of the masonry, or differs from it in its trays and prices alone. */
export function kilnOn(masonry: Masonry, plan: Plan, effort?: CuttingEffort): Kiln {
  const { geometry, layout } = masonry
  const tray = trayFrame(plan)
  const fish = fishLoad(plan)
  const site = siteOf(plan, geometry, tray)
  const days = schedule(plan, buildTasks(plan, tray, geometry, layout))
  const needs = [
    ...masonry.needs,
    ...brokenNeeds(plan, masonry.needs),
    ...trayNeeds(plan, tray),
    ...shelterNeeds(plan, site.shelter),
    ...labourNeeds(days),
  ]
  const bought = purchase(plan, needs, effort)
  return {
    ...masonry,
    plan,
    tray,
    fish,
    site,
    schedule: days,
    asBuilt: asBuilt(masonry.coursing.choice.plan, plan.walls.joint, plan.built.risen),
    needs,
    purchase: bought,
    costs: totals(plan, bought.lines),
  }
}

const findingsOf = (kiln: Kiln): Finding[] => [
  ...kiln.fish.findings,
  ...kiln.tray.findings,
  ...kiln.coursing.findings,
  ...layoutFindings(kiln.layout),
  ...kiln.site.findings,
  ...kiln.schedule.findings,
  ...asBuiltFindings(kiln.asBuilt, kiln.coursing.choice.plan, kiln.plan.walls.joint),
  ...kiln.purchase.findings,
  ...kiln.costs.findings,
]

/** Is anything wrong with the kiln as a thing to build and use? A catch too large for it is asked of `fish`. */
export const hasProblem = (kiln: Kiln): boolean =>
  [
    kiln.tray.findings,
    kiln.coursing.findings,
    layoutFindings(kiln.layout),
    kiln.site.findings,
    kiln.purchase.findings,
  ].some((findings) => findings.some(({ level }) => level === 'problem'))
