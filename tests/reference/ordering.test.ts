import { describe, expect, it } from 'vitest'
import { lotsFor } from '../../src/core/basics/count.ts'
import { cheapestRolls } from '../../src/core/purchase/roll-choice.ts'
import { cheapestSheets, coverParts } from '../../src/core/purchase/sheet-choice.ts'
import { cheapestMix } from '../../src/core/purchase/lot-mix.ts'
import type { Terms } from '../../src/core/purchase/offers.ts'

describe('ordering whole lots', () => {
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
  const offer: Terms = {
    id: 'a',
    lotSize: 1,
    lotName: 'metre',
    widthM: 0.9,
    priceMinor: 100,
    seller: 'hardware',
    sellerName: '',
    leastLots: 1,
    transportMinor: 0,
    tripLots: 0,
  }
  const squares = (lengthM: number, count: number) => ({ lengthM, widthM: lengthM, count, label: '' })
  const bought = (lengthM: number, count: number, ...offers: readonly Partial<Terms>[]) =>
    cheapestRolls(
      squares(lengthM, count),
      offers.map((one, at) => ({ ...offer, id: String(at), ...one })),
    ).map(({ terms, squares: taken, lots }) => [terms.id, taken, lots])

  // FAO Fisheries and Aquaculture Technical Paper 535, table 15: mesh for 7 trays of 1.24 m, one tray in a row: 8.68 m net, 10 m bought,
  // 15.2 % waste (given to 0.1 %). Its roll is 0.90 m wide and its trays are no square; a roll as wide as the square gives the same run.
  it('mesh for 7 trays of 1.24 m: 8.68 m net, 10 m bought, 15.2 % waste', () => {
    const [pick] = cheapestRolls(squares(1.24, 7), [{ ...offer, widthM: 1.24, lotName: 'roll', lotSize: 10 }])
    expect(pick?.plan.usedM).toBeCloseTo(8.68, 9)
    expect([pick?.lots, pick?.plan.boughtM, pick?.plan.gap]).toEqual([1, 10, 0])
    expect(Math.abs((pick?.plan.wasteShare ?? 0) - 0.152)).toBeLessThan(0.0005)
  })

  // Plain geometry: two of 0.45 lie side by side on 0.90, one of 0.46 does not; one of 1.24 takes two strips with a lap of 0.05, the second
  // 0.39 wide, and two such narrow ones lie side by side: eight squares are eight whole strips and four rows of two, 12 · 1.24 = 14.88 m.
  it('counts squares side by side, and strips that lap', () => {
    expect(bought(0.45, 8, {})).toEqual([['0', 8, 2]])
    expect(bought(0.46, 8, {})).toEqual([['0', 8, 4]])
    expect(bought(1.24, 8, {})).toEqual([['0', 8, 15]])
    expect(cheapestRolls(squares(1.24, 8), [offer])[0]?.plan.joined).toMatchObject([{ strips: 2, count: 8 }])
  })

  // Plain arithmetic: rolls of 3 m hold three rows of 0.9 for 250, metres cost 100. Seven squares: two rolls and one metre, 600, beat seven
  // metres, 700, and three rolls, 750. A trip of 60 for either seller still leaves both at 720 against 760 and 810.
  it('shares squares among offers, trips counted in', () => {
    const roll = { lotName: 'roll', lotSize: 3, priceMinor: 250 } as const
    expect(bought(0.9, 7, {}, roll)).toEqual([
      ['0', 1, 1],
      ['1', 6, 2],
    ])
    expect(bought(0.9, 7, { transportMinor: 60 }, { ...roll, transportMinor: 60 })).toHaveLength(2)
    // With a trip of 120 for the metres, three rolls at 750 are 30 dearer than two rolls and a metre, 600 + 120 = 720: with 160, cheaper.
    expect(bought(0.9, 7, { transportMinor: 160 }, roll)).toEqual([['1', 7, 3]])
  })

  // Plain geometry: a sheet of 2.44 × 1.22 gives three squares of 0.81 in a row only if the saw takes nothing: 3 · 0.81 + 2 · 0.003 = 2.436.
  it('counts squares with the saw between them', () => {
    const sheet: Terms = { ...offer, lotName: 'sheet', lotSize: 2.44, widthM: 1.22 }
    const sheets = (sideM: number, count: number, kerfM: number, ...offers: readonly Terms[]) => {
      const terms = [sheet, ...offers]
      const { lots, cut } = cheapestSheets(squares(sideM, count), coverParts(sideM, terms, []), terms, [], kerfM)
      expect(cut.gap).toBe(0)
      return lots
    }
    expect(sheets(0.81, 3, 0.003)).toEqual([1])
    expect(sheets(0.812, 3, 0.003)).toEqual([2])
    expect(sheets(0.61, 8, 0)).toEqual([1])
    expect(sheets(0.61, 8, 0.003)).toEqual([3])
    expect(coverParts(1.3, [sheet], [])).toEqual({ along: 1, across: 2 })
    // Halves of 1.3 × 0.65: two of them are 1.303 wide with the saw, more than the sheet, and 2.6 long: one a sheet.
    expect(sheets(1.3, 1, 0.003)).toEqual([2])
    // Four squares of 0.81: a sheet for three and a small sheet for one, 100 + 40; with a trip of 70 for the small one, two large sheets.
    const small = { ...sheet, id: 'b', lotSize: 1.22, widthM: 0.9, priceMinor: 40 }
    expect(sheets(0.81, 4, 0.003, small)).toEqual([1, 1])
    expect(sheets(0.81, 4, 0.003, { ...small, transportMinor: 70 })).toEqual([2, 0])
  })
})
