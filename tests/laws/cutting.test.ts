import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cutLengths } from '../../src/core/cutting/cut-lengths.ts'
import { cutRoll } from '../../src/core/cutting/cut-roll.ts'
import { cutSheets } from '../../src/core/cutting/cut-sheets.ts'
import type { CuttingPlan, LengthJob, LengthStock } from '../../src/core/cutting/length-job.ts'
import type { CutUp } from '../../src/core/cutting/sheet-job.ts'
import { cases } from './cases.ts'

const mm = (least: number, most: number) => fc.integer({ min: least, max: most }).map((x) => x / 1000)
const pieces = fc.array(fc.record({ lengthM: mm(300, 1300), count: fc.integer({ min: 1, max: 24 }) }), {
  minLength: 1,
  maxLength: 4,
})
const priced = fc.record({ lengthM: mm(1400, 6000), priceMinor: fc.integer({ min: 10, max: 90 }).map((x) => x * 50) })
const owned = fc.record({
  lengthM: mm(400, 2500),
  priceMinor: fc.constant(0),
  available: fc.integer({ min: 1, max: 3 }),
})
const jobs = fc
  .record({
    pieces,
    priced: fc.array(priced, { minLength: 1, maxLength: 3 }),
    owned: fc.array(owned, { maxLength: 2 }),
    kerfM: mm(0, 5),
    keepM: mm(0, 500),
  })
  .map(({ priced: bought, owned: had, ...rest }): LengthJob => {
    const stock = [...bought, ...had].map((s, k): LengthStock => ({ ...s, key: `s${String(k)}` }))
    return { ...rest, stock }
  })

const SAME_M = 2e-6
const runs = { numRuns: cases(80) }
/** Costs of proven plans can be compared; an unproven one only says between what its cost lies. */
const dearer = (a: CuttingPlan, b: CuttingPlan) => a.lowerBound > b.cost + 1e-6

describe('bars', () => {
  it('pieces, saw cuts and offcuts make up each bar, and the plan', () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const plan = cutLengths(job)
        for (const p of plan.patterns) {
          const own = p.pieces.reduce((sum, { lengthM }) => sum + lengthM, 0)
          expect(Math.abs(own + p.kerfM + p.offcutM - p.stockLengthM)).toBeLessThan(SAME_M)
          const cutsBetween = (p.pieces.length - 1) * job.kerfM
          expect(own + cutsBetween).toBeLessThanOrEqual(p.stockLengthM + SAME_M)
        }
        const bars = plan.patterns.reduce((sum, p) => sum + p.times, 0)
        const sum = plan.piecesM + plan.kerfM + plan.keptM + plan.wasteM
        expect(Math.abs(sum - plan.boughtM)).toBeLessThan(SAME_M * (bars + 1))
      }),
      runs,
    )
  })

  it('every piece asked for is cut once, at marks a tape can follow', () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const plan = cutLengths(job)
        const asked = new Map<string, number>()
        const tell = (lengthM: number, n: number) => {
          const key = lengthM.toFixed(4)
          asked.set(key, (asked.get(key) ?? 0) + n)
        }
        for (const p of job.pieces) tell(p.lengthM, p.count)
        for (const { pieces: cut, times, marksM, stockLengthM } of plan.patterns) {
          let end = 0
          cut.forEach(({ lengthM, labels }, k) => {
            tell(lengthM, -times)
            expect(labels).toHaveLength(times)
            end += lengthM + (k === 0 ? 0 : job.kerfM)
            // Only a last piece that ends with the bar needs no mark: there the bar's end stands for it.
            const mark = marksM[k] ?? (k === cut.length - 1 ? stockLengthM : NaN)
            expect(Math.abs(mark - end)).toBeLessThan(SAME_M)
          })
          expect(marksM.length === cut.length || marksM.length === cut.length - 1).toBe(true)
        }
        expect([...asked.values()].every((n) => n === 0)).toBe(true)
      }),
      runs,
    )
  })

  it('money is what the bars taken cost, no more of any than there is, and the bound is below it', () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const plan = cutLengths(job)
        const paid = plan.stock.reduce((sum, s, k) => sum + s.count * (job.stock[k]?.priceMinor ?? 0), 0)
        expect(plan.cost).toBe(paid)
        expect(plan.lowerBound).toBeLessThanOrEqual(plan.cost)
        plan.stock.forEach((s, k) => expect(s.count).toBeLessThanOrEqual(job.stock[k]?.available ?? Infinity))
      }),
      runs,
    )
  })

  it('more pieces never cost less', () => {
    fc.assert(
      fc.property(jobs, fc.nat(3), fc.integer({ min: 1, max: 5 }), (job, which, more) => {
        const pieces = job.pieces.map((p, k) => (k === which % job.pieces.length ? { ...p, count: p.count + more } : p))
        expect(dearer(cutLengths(job), cutLengths({ ...job, pieces }))).toBe(false)
      }),
      runs,
    )
  })

  it('one more stock length never costs more', () => {
    fc.assert(
      fc.property(jobs, priced, (job, extra) => {
        const stock = [...job.stock, { ...extra, key: 'extra' }]
        expect(dearer(cutLengths({ ...job, stock }), cutLengths(job))).toBe(false)
      }),
      runs,
    )
  })

  it('the order of the input changes nothing', () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const turned = cutLengths({ ...job, pieces: job.pieces.toReversed(), stock: job.stock.toReversed() })
        const plan = cutLengths(job)
        expect([turned.cost, turned.lowerBound]).toEqual([plan.cost, plan.lowerBound])
        const sizes = (p: CuttingPlan) =>
          p.patterns.map((c) => [c.stockLengthM, c.times, c.pieces.map((x) => x.lengthM)])
        expect(sizes(turned)).toEqual(sizes(plan))
      }),
      runs,
    )
  })
})

const rectangles = fc.array(
  fc.record({ lengthM: mm(200, 1200), widthM: mm(200, 900), count: fc.integer({ min: 1, max: 6 }) }),
  { minLength: 1, maxLength: 3 },
)

/** No piece or offcut lies outside its rectangle or over another, and with the saw cuts they fill it. */
function expectFilled(cut: CutUp, lengthM: number, widthM: number): void {
  const parts = [...cut.pieces, ...cut.offcuts]
  for (const [k, a] of parts.entries()) {
    expect(Math.min(a.xM, a.yM)).toBeGreaterThanOrEqual(0)
    expect(a.xM + a.lengthM).toBeLessThanOrEqual(lengthM + SAME_M)
    expect(a.yM + a.widthM).toBeLessThanOrEqual(widthM + SAME_M)
    for (const b of parts.slice(k + 1)) {
      const x = Math.min(a.xM + a.lengthM, b.xM + b.lengthM) - Math.max(a.xM, b.xM)
      const y = Math.min(a.yM + a.widthM, b.yM + b.widthM) - Math.max(a.yM, b.yM)
      expect(Math.min(x, y)).toBeLessThan(SAME_M)
    }
  }
  const area = parts.reduce((sum, p) => sum + p.lengthM * p.widthM, 0)
  expect(Math.abs(area + cut.kerfM2 - lengthM * widthM)).toBeLessThan(1e-5)
}

describe('sheets', () => {
  const sheets = [
    { key: 'full', lengthM: 2.44, widthM: 1.22, priceMinor: 5000 },
    { key: 'half', lengthM: 1.22, widthM: 1.22, priceMinor: 2700 },
  ]
  it('pieces, cuts and offcuts fill each sheet without overlap; every piece is cut; the bound is below the cost', () => {
    fc.assert(
      fc.property(rectangles, mm(0, 5), (pieces, kerfM) => {
        const plan = cutSheets({ pieces, sheets, kerfM, budgetNodes: 20_000 })
        for (const s of plan.sheets) expectFilled(s, s.lengthM, s.widthM)
        const asked = pieces.reduce((sum, p) => sum + p.count, 0)
        expect(plan.sheets.reduce((sum, s) => sum + s.times * s.pieces.length, 0)).toBe(asked)
        expect(plan.cost).toBe(plan.stock.reduce((sum, s) => sum + (s.costMinor ?? NaN), 0))
        expect(plan.lowerBound).toBeLessThanOrEqual(plan.cost)
      }),
      { numRuns: cases(10) },
    )
  }, 40_000)
})

describe('a roll', () => {
  it('pieces and offcuts fill each section without overlap; every piece is cut; no layout is shorter than its area', () => {
    fc.assert(
      fc.property(rectangles, mm(900, 1220), (pieces, widthM) => {
        const plan = cutRoll({
          pieces,
          roll: { key: 'mesh', widthM, sold: { by: 'length', stepM: 1 }, priceMinor: 100 },
          kerfM: 0,
        })
        for (const s of plan.sections) expectFilled(s, s.lengthM, widthM)
        const asked = pieces.reduce((sum, p) => sum + p.count, 0)
        expect(plan.sections.reduce((sum, s) => sum + s.times * s.pieces.length, 0)).toBe(asked)
        const area = pieces.reduce((sum, p) => sum + p.lengthM * p.widthM * p.count, 0)
        expect(plan.leastUsedM).toBeGreaterThanOrEqual(area / widthM - 1e-5)
        expect(plan.leastUsedM).toBeLessThanOrEqual(plan.usedM + SAME_M)
        expect(plan.boughtM).toBeGreaterThanOrEqual(plan.usedM - SAME_M)
        expect(plan.boughtM - 1).toBeLessThan(plan.usedM)
      }),
      { numRuns: cases(10) },
    )
  }, 40_000)
})
