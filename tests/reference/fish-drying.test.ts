import { describe, expect, it } from 'vitest'
import { cited } from '../../src/core/basics/derived.ts'
import { drying, productAt, yieldFrom } from '../../src/core/fish/drying.ts'
import { plainPlan } from '../core/fish/plans.ts'

const share = (value: number) => cited('test', '1', value, 'memory')

describe('yield of dressed fish', () => {
  // International Labour Office, Small-scale processing of fish, 1982: fish of 75 % moisture dried to 25 % gives 33 % of its weight.
  it('is 33 % from 75 % to 25 % moisture', () => {
    expect(yieldFrom(share(0.75), share(0.25)).value).toBeCloseTo(0.333, 3)
  })
  // Dry matter does not change: 25 kg of solids in 100 kg are 90 % of what is left at 10 % moisture, 27.8 kg.
  it('is 27.8 % to 10 % moisture', () => {
    expect(yieldFrom(share(0.75), share(0.1)).value).toBeCloseTo(0.278, 3)
  })
  it('leaves dry matter what it was', () => {
    const plan = plainPlan()
    const dried = drying(plan, cited('test', 'kg', 100, 'memory'))
    expect(dried.product.value * (1 - plan.catch.moistureFinal)).toBeCloseTo(100 * (1 - plan.catch.moistureFresh), 9)
    expect(dried.product.value + dried.waterOut.value).toBeCloseTo(100, 9)
  })
})

describe('keeping', () => {
  // FAO food-loss pages: hard smoke-dried fish of 10–15 % moisture keeps 6–9 months; 40–60 % is a soft product, risky after 3 days.
  it('is six to nine months at 10 to 15 % moisture', () => {
    expect(productAt(0.12).keepsDays).toEqual({ from: 180, to: 270 })
    expect(productAt(0.15).keepsDays).toEqual({ from: 180, to: 270 })
  })
  it('is three days at most at 40 to 60 %', () => {
    expect(productAt(0.41).keepsDays?.to).toBe(3)
    expect(productAt(0.6).keepsDays?.to).toBe(3)
  })
  it('is not claimed between', () => expect(productAt(0.25).keepsDays).toBeNull())
})
