import { describe, expect, it } from 'vitest'
import { cutLengths } from '../../src/core/cutting/cut-lengths.ts'
import { cutRoll } from '../../src/core/cutting/cut-roll.ts'
import { type CutTree, guillotineTable, type SheetItem } from '../../src/core/cutting/guillotine-table.ts'
import { richestSheet } from '../../src/core/cutting/guillotine-limited.ts'
import checks from './data/cutting-checks.json' with { type: 'json' }

// Each instance names its source in the data file: AMPL book ch. 15 (data from memory there), an encyclopedia's illustration,
// BPPLib; optima re-proved outside this project by a mixed-integer solver on an arc-flow model.
describe('bars: published lists', () => {
  const lists = [...checks.one_d.map((c) => ({ ...c, kerf: 0 })), ...checks.one_d_kerf]
  it.each(lists.map((c) => [c.id, c] as const))('%s', (_, { items, stock, kerf, optimum }) => {
    const plan = cutLengths({
      pieces: items.map(([length = 0, count = 0]) => ({ lengthM: length / 1000, count })),
      stock: [{ key: 'bar', lengthM: stock / 1000, priceMinor: 1 }],
      kerfM: kerf / 1000,
      keepM: 0.3,
    })
    expect([plan.cost, plan.lowerBound, plan.gap]).toEqual([optimum, optimum, 0])
    expect(plan.patterns.reduce((sum, p) => sum + p.times, 0)).toBe(optimum)
  })
})

/** Copies of each item in a cut tree, and the room it takes: worked out here from the tree alone. */
function measured(tree: CutTree, items: readonly SheetItem[]): { length: number; width: number; counts: number[] } {
  if (tree.kind === 'nothing') return { length: 0, width: 0, counts: items.map(() => 0) }
  if (tree.kind === 'item') {
    const { length = 0, width = 0 } = items[tree.item] ?? {}
    const counts = items.map((_, i) => (i === tree.item ? 1 : 0))
    return tree.turned ? { length: width, width: length, counts } : { length, width, counts }
  }
  const [a, b] = [measured(tree.first, items), measured(tree.second, items)]
  const counts = a.counts.map((n, i) => n + (b.counts[i] ?? 0))
  return tree.across === 'length'
    ? { length: a.length + b.length, width: Math.max(a.width, b.width), counts }
    : { length: Math.max(a.length, b.length), width: a.width + b.width, counts }
}

function expectSound(tree: CutTree, items: readonly SheetItem[], L: number, W: number, value: number): void {
  const { length, width, counts } = measured(tree, items)
  expect(length).toBeLessThanOrEqual(L)
  expect(width).toBeLessThanOrEqual(W)
  counts.forEach((n, i) => expect(n).toBeLessThanOrEqual(items[i]?.most ?? Infinity))
  expect(counts.reduce((sum, n, i) => sum + n * (items[i]?.value ?? 0), 0)).toBe(value)
}

// Christofides and Whitlock, Operations Research 25, 1977, table 2 (OR-Library); Beasley, JORS 36, 1985, table 1 (OR-Library).
describe('sheets: published guillotine values', () => {
  it.each(checks.two_d_guillotine.map((c) => [c.id, c] as const))('%s', (_, c) => {
    const items = c.items.map((i) => ({
      length: i.l,
      width: i.w,
      value: i.value,
      ...('max' in i ? { most: i.max } : {}),
    }))
    const found = richestSheet(c.L, c.W, items, 5_000_000)
    expect([found?.value, found?.bound]).toEqual([c.computed, c.computed])
    if (found !== undefined) expectSound(found.tree, items, c.L, c.W, c.computed)
    if (c.unconstrained_computed === undefined) return
    const table = guillotineTable(c.L, c.W, items)
    expect(table?.most(table.lengths.length - 1, table.widths.length - 1)).toBe(c.unconstrained_computed)
  })

  it('gcut1 with turning: 58,136', () => {
    const c = checks.two_d_guillotine.find(({ id }) => id === 'gcut1')
    if (c === undefined) throw new Error('no such list')
    const items = c.items.map((i) => ({ length: i.l, width: i.w, value: i.value, turns: true }))
    const found = richestSheet(c.L, c.W, items, 5_000_000)
    expect([found?.value, found?.bound]).toEqual([c.computed_with_rotation, c.computed_with_rotation])
    if (found !== undefined) expectSound(found.tree, items, c.L, c.W, 58_136)
  })
})

describe('mesh from a roll', () => {
  // FAO Fisheries and Aquaculture Technical Paper 535, table 15: 7 trays of 1.24 m from a 0.90 m roll, 8.68 m net, 10 m bought,
  // 15.2 % waste (given to 0.1 %). That the roll is sold in lots of 10 m is read from the amount bought.
  it('7 trays of 1.24 m: 8.68 m, 10 m bought, 15.2 % more than net', () => {
    const plan = cutRoll({
      pieces: [{ lengthM: 1.24, widthM: 0.9, count: 7 }],
      roll: { key: 'mesh', widthM: 0.9, sold: { by: 'roll', lengthM: 10 }, priceMinor: 1 },
      kerfM: 0,
    })
    expect(plan.usedM).toBeCloseTo(8.68, 9)
    expect([plan.boughtM, plan.lots, plan.gap]).toEqual([10, 1, 0])
    expect(Math.abs(plan.wasteShare - 0.152)).toBeLessThan(0.0005)
  })

  // By hand: a column 0.5 m wide of 0.4 m lengths and a column 0.4 m wide of 0.5 m lengths fill 0.9 × 2 m with 5 + 4 pieces.
  it('nine of 0.5 × 0.4 m fill 2 m of a 0.9 m roll', () => {
    const plan = cutRoll({
      pieces: [{ lengthM: 0.5, widthM: 0.4, count: 9 }],
      roll: { key: 'mesh', widthM: 0.9, sold: { by: 'length', stepM: 1 }, priceMinor: 1 },
      kerfM: 0,
    })
    expect(plan.usedM).toBeCloseTo(2, 6)
    expect([plan.boughtM, plan.gap]).toEqual([2, 0])
  })
})
