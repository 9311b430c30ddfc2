import { describe, expect, it } from 'vitest'
import { counted } from '../../src/core/basics/derived.ts'
import { lotsFor } from '../../src/core/basics/count.ts'
import { CATALOGUE_MIXES } from '../../src/core/plan/catalogue.ts'
import { concreteAmounts } from '../../src/core/quantities/mix.ts'

const cubicMetre = counted('test', 'm3', 1)
const bags = (kg: number) => kg / CATALOGUE_MIXES.cement.bagKg

describe('concrete by the dry-volume method', () => {
  // Worked example of the dry-volume method, recomputed: 1 m³ of 1:2:4 at a factor of 1.54 takes 1.54 / 7 · 1440 = 316.8 kg of cement,
  // 1.54 · 2 / 7 = 0.44 m³ of sand, 0.88 m³ of stone. Exact arithmetic, so the tolerance is that of the machine.
  it('1:2:4 at 1.54: 316.8 kg, 0.44 m³, 0.88 m³ in a cubic metre', () => {
    const { cement, sand, stone } = concreteAmounts(cubicMetre, { cement: 1, sand: 2, stone: 4, dryFactor: 1.54 })
    expect(cement.value).toBeCloseTo(316.8, 9)
    expect(sand.value).toBeCloseTo(0.44, 12)
    expect(stone.value).toBeCloseTo(0.88, 12)
  })

  // Public works schedule CSR-2010, ch. 27: 50 kg bags of cement, m³ of sand and of stone in 1 m³ of concrete. At a factor of 1.57 the method
  // comes within 3 %, which is the rounding of the schedule (half bags, hundredths of a cubic metre).
  it.each([
    ['1:2:4', { cement: 1, sand: 2, stone: 4 }, 6.5, 0.45, 0.9],
    ['1:3:6', { cement: 1, sand: 3, stone: 6 }, 4.5, 0.47, 0.94],
    ['1:4:8', { cement: 1, sand: 4, stone: 8 }, 3.5, 0.48, 0.96],
  ])('%s at 1.57 is within 3 %% of the schedule', (_, parts, wantedBags, sandM3, stoneM3) => {
    const { cement, sand, stone } = concreteAmounts(cubicMetre, { ...parts, dryFactor: 1.57 })
    expect(Math.abs(bags(cement.value) / wantedBags - 1)).toBeLessThan(0.03)
    expect(Math.abs(sand.value / sandM3 - 1)).toBeLessThan(0.03)
    expect(Math.abs(stone.value / stoneM3 - 1)).toBeLessThan(0.03)
  })

  // Worked examples of the method: a 50 kg bag is 0.03472 m³ of loose cement (50 / 1440, five figures given).
  it('takes a bag for 0.03472 m³', () => {
    const { bagKg, looseKgM3 } = CATALOGUE_MIXES.cement
    expect(bagKg / looseKgM3).toBeCloseTo(0.03472, 5)
  })

  // US Army, EN5466: 70.1 yd³ at 7.05 sacks each is 494.205 sacks: order 495.
  it('orders 495 sacks for 70.1 yd³ at 7.05 sacks', () => {
    expect(lotsFor(70.1 * 7.05, 1)).toBe(495)
  })
})
