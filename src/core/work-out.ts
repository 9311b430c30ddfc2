import type { Finding } from './basics/finding.ts'
import { costs, type Costs } from './costs/costs.ts'
import { materialsList, type MaterialsList } from './documents/materials-list.ts'
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

/** Everything that follows from a plan. Screens and sheets read it and compute nothing themselves. */
export interface WorkedOut {
  readonly plan: Plan
  readonly tray: TrayFrame
  readonly fish: FishLoad
  readonly coursing: Coursing
  readonly geometry: KilnGeometry
  readonly site: Site
  readonly layout: Layout
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
  const needs = quantities(plan, tray, geometry, layout, site.shelter)
  const bought = purchase(plan, needs)
  const money = costs(plan, bought.lines)
  const list = materialsList(bought, money)
  const findings = [
    ...fish.findings,
    ...tray.findings,
    ...coursing.findings,
    ...layoutFindings(layout),
    ...site.findings,
    ...bought.findings,
    ...money.findings,
  ]
  return { plan, tray, fish, coursing, geometry, site, layout, needs, purchase: bought, costs: money, list, findings }
}
