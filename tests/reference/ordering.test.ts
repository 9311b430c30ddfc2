import { describe, expect, it } from 'vitest'
import { lotsFor } from '../../src/core/basics/count.ts'
import { fitInRoll, fitInSheet, rollRunM } from '../../src/core/purchase/flat.ts'
import { cheapestMix } from '../../src/core/purchase/lot-mix.ts'

describe('ordering whole lots', () => {
  // FAO Fisheries and Aquaculture Technical Paper 535, table 15: mesh for 7 trays of 1.24 m from a 0.90 m roll, one tray in a row: 8.68 m net,
  // 10 m bought, 15.2 % waste (given to 0.1 %).
  it('mesh for 7 trays of 1.24 m: 8.68 m net, 10 m bought, 15.2 % waste', () => {
    const net = rollRunM(7, 1.24, { across: 1, strips: 1 })
    expect(net).toBeCloseTo(8.68, 9)
    const bought = 10 * lotsFor(net, 10)
    expect(bought).toBe(10)
    expect(Math.abs((bought - net) / net - 0.152)).toBeLessThan(0.0005)
  })

  // Worked example of a US Navy text (Builder manual 14045): 690 bricks and 10 % for breakage are 759.
  it('690 bricks and 10 % are 759', () => {
    expect(lotsFor(690 * 1.1, 1)).toBe(759)
  })

  // Blocks to buy, common practice of rounding up after breakage: 57 and 5 % are 59.85, whole blocks 60, one fewer is short.
  it('57 blocks and 5 % are 60', () => {
    expect(lotsFor(57 * 1.05, 1)).toBe(60)
  })

  const terms = { leastLots: 1, transportMinor: 0, tripLots: 0 }
  // Plain arithmetic: 116 kg in bags of 50 at 10 and 25 at 6 costs 20 + 6 = 26 for 125 kg; three large bags would cost 30, five small ones 30.
  it('116 kg of cement is cheapest as two large bags and one small', () => {
    const mix = cheapestMix(116, [
      { ...terms, lotSize: 50, priceMinor: 10 },
      { ...terms, lotSize: 25, priceMinor: 6 },
    ])
    expect(mix).toEqual({ lots: [2, 1], costMinor: 26, proven: true })
  })
})

describe('squares out of rolls and sheets', () => {
  // Plain geometry: two pieces of 0.45 lie side by side on 0.90; one of 0.46 does not; one of 1.24 takes two strips with a lap of 0.05.
  it('counts pieces side by side and strips', () => {
    expect(fitInRoll(0.45, 0.9)).toEqual({ across: 2, strips: 1 })
    expect(fitInRoll(0.46, 0.9)).toEqual({ across: 1, strips: 1 })
    expect(fitInRoll(1.24, 0.9)).toEqual({ across: 0, strips: 2 })
    expect(fitInRoll(1.75, 0.9)).toEqual({ across: 0, strips: 2 })
    expect(fitInRoll(1.76, 0.9)).toEqual({ across: 0, strips: 3 })
  })

  // Plain geometry: a sheet of 2.44 × 1.22 gives three squares of 0.81 in a row only if the saw takes nothing: 3 · 0.81 + 2 · 0.003 = 2.436.
  it('counts squares with the saw between them', () => {
    expect(fitInSheet(0.81, 2.44, 1.22, 0.003)).toEqual({ perSheet: 3, parts: 1 })
    expect(fitInSheet(0.812, 2.44, 1.22, 0.003)).toEqual({ perSheet: 2, parts: 1 })
    expect(fitInSheet(0.61, 2.44, 1.22, 0)).toEqual({ perSheet: 8, parts: 1 })
    expect(fitInSheet(0.61, 2.44, 1.22, 0.003)).toEqual({ perSheet: 3, parts: 1 })
  })
})
