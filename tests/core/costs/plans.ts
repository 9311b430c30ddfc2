import { readFileSync } from 'node:fs'
import path from 'node:path'
import { parsePlan } from '../../../src/core/plan/parse-plan.ts'
import type { Offer, Plan } from '../../../src/core/plan/schema.ts'

/** A plan of the product's examples, through the door that all plans pass. */
export function examplePlan(name: 'one-chamber' | 'two-chambers' | 'three-chambers'): Plan {
  const file = path.resolve(import.meta.dirname, `../../../shared/examples/${name}.json`)
  const found = parsePlan(JSON.parse(readFileSync(file, 'utf8')))
  if (!found.ok) throw new Error(`${name}: ${JSON.stringify(found.problems)}`)
  return found.value
}

/** One purchase of the plan's first hardware shop, with what differs. */
export const bought = (
  item: string,
  quantity: number,
  paidMinor: number,
  more: Partial<Plan['spending'][string]> = {},
): Plan['spending'][string] => ({
  kind: 'purchase',
  item,
  quantity,
  paidMinor,
  seller: 'hardware',
  sellerName: '',
  instead: '',
  day: null,
  paidBy: null,
  receipt: null,
  ...more,
})

/** One offer of a hardware shop, in bags, with what differs. */
export const offered = (
  item: string,
  lotSize: number,
  priceMinor: number | null,
  more: Partial<Offer> = {},
): Offer => ({
  item,
  lotSize,
  lotName: 'bag',
  priceMinor,
  seller: 'hardware',
  sellerName: '',
  place: '',
  seen: null,
  leastLots: 1,
  transportMinor: 0,
  tripLots: 0,
  widthM: 0,
  chosen: false,
  ...more,
})
