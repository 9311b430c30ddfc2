import type { Finding } from './basics/finding.ts'
import { costs, type Costs } from './costs/costs.ts'
import { materialsList, type MaterialsList } from './documents/materials-list.ts'
import { dryingFindings } from './fish/drying-findings.ts'
import { fishLoad, type FishLoad } from './fish/load.ts'
import { trayFrame, type TrayFrame } from './fish/tray-frame.ts'
import { kilnGeometry, type KilnGeometry } from './geometry/kiln.ts'
import { siteOf, type Site } from './geometry/site.ts'
import type { Layout } from './layout/contract.ts'
import { layOut } from './layout/lay-out.ts'
import { layoutFindings } from './layout/layout-findings.ts'
import { coursingOf, layoutRequest, levelsFrom, type Coursing } from './layout/layout-request.ts'
import type { Plan } from './plan/schema.ts'
import { purchase, type Purchase } from './purchase/purchase.ts'
import type { Need } from './quantities/need.ts'
import { quantities } from './quantities/quantities.ts'
import { labourNeeds } from './schedule/labour-needs.ts'
import { schedule, type Schedule } from './schedule/schedule.ts'
import { buildTasks } from './schedule/tasks.ts'

/** Everything that follows from a plan. Screens and sheets read it and compute nothing themselves. */
export interface WorkedOut {
  readonly plan: Plan
  readonly tray: TrayFrame
  readonly fish: FishLoad
  readonly coursing: Coursing
  readonly geometry: KilnGeometry
  readonly site: Site
  readonly layout: Layout
  readonly schedule: Schedule
  readonly needs: readonly Need[]
  readonly purchase: Purchase
  readonly costs: Costs
  readonly list: MaterialsList
  readonly findings: readonly Finding[]
}

/** The whole calculation, stage after stage; each is a pure function of the ones before. */
export function workOut(plan: Plan): WorkedOut {
  const tray = trayFrame(plan)
  const fish = fishLoad(plan)
  const coursing = coursingOf(plan)
  const geometry = kilnGeometry(plan, levelsFrom(coursing))
  const site = siteOf(plan, geometry, tray)
  const layout = layOut(layoutRequest(plan, coursing, geometry))
  const days = schedule(plan, buildTasks(plan, tray, geometry, layout))
  const needs = [...quantities(plan, tray, geometry, layout, site.shelter), ...labourNeeds(days)]
  const bought = purchase(plan, needs)
  const money = costs(plan, bought.lines)
  const list = materialsList(bought, money)
  const findings = [
    ...fish.findings,
    ...dryingFindings(plan),
    ...tray.findings,
    ...coursing.findings,
    ...layoutFindings(layout),
    ...site.findings,
    ...days.findings,
    ...bought.findings,
    ...money.findings,
  ]
  return {
    plan,
    tray,
    fish,
    coursing,
    geometry,
    site,
    layout,
    schedule: days,
    needs,
    purchase: bought,
    costs: money,
    list,
    findings,
  }
}
