import { describe, expect, it } from 'vitest'
import { counted } from '../../src/core/basics/derived.ts'
import { CATALOGUE_MIXES, CATALOGUE_UNITS } from '../../src/core/plan/catalogue.ts'
import { beddedAreaM2 } from '../../src/core/quantities/hollow-beds.ts'
import { mortarAmounts } from '../../src/core/quantities/mix.ts'

const unit = (key: string) => {
  const found = CATALOGUE_UNITS.find((one) => one.key === key)
  if (found === undefined) throw new Error(key)
  return found
}

describe('mortar by the dry-volume method', () => {
  // Worked examples, recomputed: 1 m³ of mortar at a factor of 1.33. 1:4 takes 1.33 / 5 · 1440 = 383.04 kg and 1.064 m³ of sand, 1:6 273.6 kg and 1.14 m³.
  it.each([
    ['1:4', 4, 383.04, 1.064],
    ['1:6', 6, 273.6, 1.14],
  ])('%s at 1.33', (_, sandPart, cementKg, sandM3) => {
    const { cement, sand } = mortarAmounts(counted('test', 'm3', 1), {
      cement: 1,
      clay: 0,
      sand: sandPart,
      dryFactor: 1.33,
    })
    expect(cement.value).toBeCloseTo(cementKg, 9)
    expect(sand.value).toBeCloseTo(sandM3, 12)
  })

  // Worked example, recomputed: 1 m³ of brickwork of 190 × 90 × 90 bricks at 10 mm joints holds 500 bricks and 0.2305 m³ of mortar,
  // 1:5 at 1.33 takes 73.6 kg of cement (given to 0.1 kg).
  it('1 m³ of 190 × 90 × 90 brickwork: 500 bricks, 0.2305 m³, 73.6 kg', () => {
    const { lengthM, widthM, heightM, joint } = unit('brick-190-90-90')
    const j = joint.usualM
    const bricks = 1 / ((lengthM + j) * (widthM + j) * (heightM + j))
    const mortarM3 = 1 - bricks * lengthM * widthM * heightM
    expect(bricks).toBeCloseTo(500, 9)
    expect(mortarM3).toBeCloseTo(0.2305, 9)
    const { cement } = mortarAmounts(counted('test', 'm3', mortarM3), { cement: 1, clay: 0, sand: 5, dryFactor: 1.33 })
    expect(Math.abs(cement.value - 73.6)).toBeLessThan(0.05)
  })

  // Structural worked example, recomputed: a 450 × 225 × 225 block with two cells of 150 × 125 mm is bedded on 0.06375 m². At 25 mm joints and
  // ten blocks in a square metre it gives 0.0283 m³/m² of mortar; 1.5 % allowed, since the example rounds the end of the block.
  it('a nine-inch hollow block beds on 0.06375 m²; ten of them at 25 mm take 0.0283 m³', () => {
    const block = unit('hollow-450-225-225')
    expect(beddedAreaM2(block)).toBeCloseTo(0.06375, 9)
    const perBlockM3 = (beddedAreaM2(block) + block.widthM * block.heightM) * 0.025
    expect(Math.abs((10 * perBlockM3) / 0.0283 - 1)).toBeLessThan(0.015)
  })
})

describe('water and fill', () => {
  // US Navy and Army soil tables: dry sand weighs 1442 kg/m³ loose and 1682 tamped, so 1.166 loose makes one tamped.
  it('tamped dry sand takes 1.166 of loose', () => {
    const sand = CATALOGUE_MIXES.fill.find((one) => one.key === 'sand')
    expect(sand?.compaction).toBeCloseTo(1682 / 1442, 3)
  })
})
