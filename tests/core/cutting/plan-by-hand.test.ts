import { describe, expect, it } from 'vitest'
import { cutLengths } from '../../../src/core/cutting/cut-lengths.ts'
import { cutSheets } from '../../../src/core/cutting/cut-sheets.ts'

const bar = { key: 'bar', lengthM: 3.6, priceMinor: 900 }
const none = { kerfM: 0, keepM: 0.3 }

describe('cutting plans small enough to see through', () => {
  // Three of 1.2 m fill 3.6 m with no saw cut: seven take three bars, and 7 · 1.2 ÷ 3.6 = 2.33 bars are a bound that rounds up to three.
  it('deals every piece its own label, bar by bar', () => {
    const plan = cutLengths({
      pieces: [
        { lengthM: 1.2, count: 4, label: 'rail' },
        { lengthM: 1.2, count: 3, label: 'batten' },
      ],
      stock: [bar],
      ...none,
    })
    expect([plan.cost, plan.lowerBound, plan.gap]).toEqual([2700, 2700, 0])
    const labels = plan.patterns.flatMap(({ pieces }) => pieces.flatMap((piece) => piece.labels))
    expect(labels.toSorted()).toEqual(['batten', 'batten', 'batten', 'rail', 'rail', 'rail', 'rail'])
    for (const { pieces, times } of plan.patterns) for (const piece of pieces) expect(piece.labels).toHaveLength(times)
    expect(plan.offcuts).toEqual([{ lengthM: 2.4, count: 1 }])
    expect([plan.boughtM, plan.piecesM, plan.kerfM, plan.keptM, plan.wasteM].map((m) => Number(m.toFixed(9)))).toEqual([
      10.8, 8.4, 0, 2.4, 0,
    ])
  })

  // Three of 1.2 m fill the bar whole: what the parts of a bar cost is what the plan costs.
  it('is proven by the bound alone where nothing is left over', () => {
    const plan = cutLengths({ pieces: [{ lengthM: 1.2, count: 6 }], stock: [bar], ...none })
    expect([plan.cost, plan.gap, plan.method, plan.fewestPatterns]).toEqual([1800, 0, 'linear-bound', true])
    expect(plan.patterns).toMatchObject([{ times: 2, offcutM: 0, kept: false, stockKey: 'bar', stockLengthM: 3.6 }])
    // The last piece ends with the bar and needs no mark.
    expect(plan.patterns[0]?.marksM).toEqual([1.2, 2.4])
  })

  it('refuses what is thinner than the finest mark, and a saw that is no size', () => {
    const plan = cutLengths({ pieces: [{ lengthM: 1e-9, count: 1 }], stock: [bar], ...none })
    expect(plan.problems).toEqual([{ kind: 'piece-not-a-size', piece: 0 }])
    const sheets = cutSheets({
      pieces: [{ lengthM: 0.5, widthM: 0.5, count: 1 }],
      sheets: [{ key: 'sheet', lengthM: 1, widthM: 1, priceMinor: 5 }],
      kerfM: -1,
    })
    expect(sheets.problems).toEqual([{ kind: 'kerf-not-a-size' }])
    expect([sheets.cost, sheets.gap]).toEqual([5, 0])
  })
})
