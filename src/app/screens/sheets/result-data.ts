import { layoutExport } from '../../../core/layout/layout-export.ts'
import { layoutRequest } from '../../../core/layout/layout-request.ts'
import type { Derived } from '../../../core/basics/derived.ts'
import type { WorkedOut } from '../../../core/work-out.ts'

/** A worked-out number in a file: what it is, its value in SI, and by what it was found. */
const figure = ({ id, value, unit, formula, source }: Derived) => ({
  id,
  value,
  unit,
  ...(formula !== undefined && { formula }),
  ...(source !== undefined && { source }),
})

/** All results of a plan as plain data in SI and minor units of money, for other programs and for judges of this one. */
export function resultData({
  plan,
  coursing,
  geometry,
  layout,
  needs,
  list,
  costs,
  schedule,
  findings,
  tray,
  fish,
}: WorkedOut) {
  return {
    format: 'kilnwright-results',
    version: 1,
    plan,
    size: {
      outsideLength: figure(geometry.outsideLength),
      outsideDepth: figure(geometry.outsideDepth),
      diagonal: figure(geometry.diagonal),
      wall: figure(geometry.wall),
    },
    ground: {
      dig: figure(geometry.earthworks.dig),
      footingConcrete: figure(geometry.footing.concrete),
    },
    fish: { perTray: figure(fish.perTray), freshPerDay: figure(fish.freshPerDay) },
    trays: { count: figure(tray.count), side: figure(tray.side) },
    layout: layoutExport(layoutRequest(plan, coursing, geometry), layout),
    needs: needs.map(({ item, section, use, net, gross }) => ({
      item,
      section,
      use,
      net: figure(net),
      gross: figure(gross),
    })),
    list: list.groups.flatMap(({ seller, sellerName, rows }) =>
      rows.map(({ item, lots, lotSize, bought, cost }) => ({
        seller,
        sellerName,
        item,
        lots: lots.value,
        lotSize: figure(lotSize),
        bought: figure(bought),
        costMinor: cost === null ? null : cost.value,
      })),
    ),
    costs: {
      subtotalMinor: list.subtotal.value,
      contingencyMinor: list.contingency.value,
      totalMinor: costs.total.value,
      unpriced: list.unpriced,
    },
    days: { length: figure(schedule.length), readyDay: schedule.readyDay },
    findings: findings.map(({ level, kind, args }) => ({ level, kind, args })),
  }
}
