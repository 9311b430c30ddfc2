import { cited, derive, typed, type Derived } from '../basics/derived.ts'
import type { Range } from '../basics/range.ts'
import type { Plan } from '../plan/schema.ts'
import { dressedFish } from './dressed-fish.ts'
import { FISH_DATA, type FishProduct } from './fish-data.ts'

/** What becomes of fish: dry matter stays, water goes. Masses in kg, moistures wet basis as a share of 1. */
export interface Drying {
  readonly fresh: Derived<'kg'>
  readonly dressed: Derived<'kg'>
  /** Product over dressed fish, and over fish as landed. */
  readonly yieldOfDressed: Derived<'1'>
  readonly yieldOfFresh: Derived<'1'>
  readonly product: Derived<'kg'>
  readonly waterOut: Derived<'kg'>
  /** Product between the drier and the wetter end of its kind. */
  readonly productRange: Range<'kg'>
  readonly kind: FishProduct
  /** Money that a kilogram of product must bring for each unit of money that a kilogram of fish cost, fuel and work apart. */
  readonly dearer: Derived<'1'>
}

/** Share of the dressed fish that is left, by its dry matter: (1 − M₀) / (1 − M). */
export const yieldFrom = (before: Derived<'1'>, after: Derived<'1'>): Derived<'1'> =>
  derive('drying.yield', '1', '(1 − M0) / (1 − M1)', { M0: before, M1: after }, (v) => (1 - v.M0) / (1 - v.M1), {
    source: 'ilo-1982',
  })

/** The kind of product that a moisture makes: bands meet, and each owns its upper end. */
export function productAt(moisture: number): FishProduct {
  const byWetness = FISH_DATA.products.toSorted((a, b) => a.moistureTo - b.moistureTo)
  const kind = byWetness.find((one) => moisture <= one.moistureTo + 1e-9) ?? byWetness.at(-1)
  if (kind === undefined) throw new Error('no products in the catalogue')
  return kind
}

/** Dry-matter balance of a mass of fish as landed, dried to the plan's target. */
export function drying(plan: Plan, fresh: Derived<'kg'>): Drying {
  const { catch: fish } = plan
  const dressed = dressedFish(plan, fresh)
  const before = typed('catch.moisture-fresh', '1', fish.moistureFresh, 'catch.moistureFresh')
  const after = typed('catch.moisture-final', '1', fish.moistureFinal, 'catch.moistureFinal')
  const left = yieldFrom(before, after)
  const product = productOf(dressed, left)
  const yieldOfFresh = derive('drying.yield-of-fresh', '1', 'P / W', { P: product, W: fresh }, (v) => v.P / v.W)
  const kind = productAt(fish.moistureFinal)
  // A fish that was drier when landed than the product's end is not made wetter.
  const end = (moisture: number) => {
    const at = moisture < fish.moistureFresh ? cited('drying.band-end', '1', moisture, kind.source) : before
    return productOf(dressed, yieldFrom(before, at))
  }
  return {
    fresh,
    dressed,
    yieldOfDressed: left,
    yieldOfFresh,
    product,
    waterOut: derive('drying.water-out', 'kg', 'D − P', { D: dressed, P: product }, (v) => v.D - v.P),
    productRange: { low: end(kind.moistureFrom), high: end(kind.moistureTo) },
    kind,
    dearer: derive('drying.dearer', '1', '1 / y', { y: yieldOfFresh }, (v) => 1 / v.y),
  }
}

const productOf = (dressed: Derived<'kg'>, left: Derived<'1'>): Derived<'kg'> =>
  derive('drying.product', 'kg', 'D · y', { D: dressed, y: left }, (v) => v.D * v.y)
