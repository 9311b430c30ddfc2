import { describe, expect, it } from 'vitest'
import { betterSizes, uncutSides } from '../../../src/core/layout/better-sizes.ts'
import { layOut } from '../../../src/core/layout/lay-out.ts'
import { layoutExport } from '../../../src/core/layout/layout-export.ts'
import { deepSearch } from '../../../src/core/layout/searching-deep.ts'
import { request, UNITS } from './requests.ts'
import { outsideIn, overlapIn } from './solids.ts'

describe('deep search', () => {
  it('reports each step, and its choices lay the very wall it found', () => {
    const plan = request({ unit: UNITS.brick190, chambers: 2 })
    const steps = [...deepSearch(plan)]
    const last = steps.at(-1)
    if (last === undefined) throw new Error('no step')
    expect(steps.every(({ done }, i) => done === i + 1)).toBe(true)
    const layout = layOut({ ...plan, turned: last.choices })
    expect(layout.counts.bought).toBe(last.bought)
    expect(layout.counts.cutPieces).toBe(last.cutPieces)
    expect(layout.trace.breaches).toBeCloseTo(last.breaches, 9)
    expect(overlapIn(layout)).toBeNull()
  })

  it('looking for few cuts finds no more cuts than looking for few units, and the other way round', () => {
    for (const unit of [UNITS.hollow450x150, UNITS.brick230, UNITS.earth290]) {
      const plan = request({ unit, chambers: 1, clearSideM: 0.93 })
      const units = [...deepSearch({ ...plan, sought: 'units' })].at(-1)
      const cuts = [...deepSearch({ ...plan, sought: 'cuts' })].at(-1)
      if (units === undefined || cuts === undefined) throw new Error('no step')
      expect(units.breaches).toBe(0)
      expect(cuts.breaches).toBe(0)
      expect(cuts.cutPieces).toBeLessThanOrEqual(units.cutPieces)
      expect(units.bought).toBeLessThanOrEqual(cuts.bought)
    }
  })
})

describe('choices made for another plan', () => {
  it('still lay a sound wall: nothing overlaps, whatever they say', () => {
    const { choices } = layOut(request({ unit: UNITS.hollow450x150, chambers: 3 })).trace
    const wild = {
      ...choices,
      owns: [0, 1, 0, 1, 1, 0] as const,
      bearingM: { outer: 3, inner: 0 },
      exchanges: [
        { wall: 'front' as const, course: 0, track: 0, run: 0, lengthsUm: [1, 2, 3] },
        { wall: 'divider' as const, course: 99, track: 5, run: 7, lengthsUm: [] },
      ],
    }
    for (const [leaf, bond] of [
      ['single', 'stretcher'],
      ['one-brick', 'english'],
      ['one-brick', 'header'],
    ] as const)
      for (const chambers of [1, 2, 4]) {
        const plan = request({ unit: UNITS.brick215, chambers, leaf, bond })
        for (const turned of [wild, { ...wild, owns: [] }]) {
          const layout = layOut({ ...plan, turned })
          expect(overlapIn(layout)).toBeNull()
          expect(outsideIn(layout)).toBeNull()
          expect(layout.mortarM3).toBeGreaterThan(0)
        }
      }
  })
})

describe('better sizes', () => {
  it('knows the sides at which rings close uncut: 0.77 m in 450 × 150, 0.76 in 290 × 140', () => {
    // Geometry of the pinwheel, a = k·M − t.
    expect(uncutSides(request({ unit: UNITS.hollow450x150 }), 0.7, 0.8).some((a) => Math.abs(a - 0.77) < 1e-9)).toBe(
      true,
    )
    expect(uncutSides(request({ unit: UNITS.earth290 }), 0.7, 0.8).some((a) => Math.abs(a - 0.76) < 1e-9)).toBe(true)
  })

  it('offers only sides near the wanted one that need fewer cuts or break fewer rules, and lay what they say', () => {
    const plan = request({ unit: UNITS.hollow450x150, chambers: 1 })
    const now = layOut(plan)
    const sizes = betterSizes(plan)
    expect(sizes.length).toBeGreaterThan(0)
    for (const { clearSideM, bought, cutPieces, breaches } of sizes) {
      expect(Math.abs(clearSideM - 0.68)).toBeLessThanOrEqual(0.68 * 0.15 + 1e-9)
      expect(cutPieces < now.counts.cutPieces || breaches < now.trace.breaches).toBe(true)
      const there = layOut({ ...plan, clearSideM })
      expect(there.counts.bought).toBe(bought)
      expect(there.counts.cutPieces).toBe(cutPieces)
    }
  })

  it('a remedy that a finding offers mends the plan: no finding is left', () => {
    const plan = request({ unit: UNITS.hollow450x150, chambers: 2 })
    const remedies = layOut(plan).findings.flatMap((one) => (one.kind === 'pillar-unbonded' ? one.remedies : []))
    expect(remedies.length).toBeGreaterThan(0)
    for (const remedy of remedies) {
      const mended =
        remedy.kind === 'opening-width'
          ? { ...plan, opening: { ...plan.opening, widthM: remedy.widthM } }
          : remedy.kind === 'clear-side'
            ? { ...plan, clearSideM: remedy.clearSideM }
            : plan
      expect(layOut(mended).findings).toEqual([])
    }
  })
})

describe('export', () => {
  it('is plain JSON that holds every unit, opening and lintel', () => {
    const plan = request({ unit: UNITS.brick215, chambers: 2, leaf: 'one-brick', bond: 'english' })
    const layout = layOut(plan)
    const out: unknown = JSON.parse(JSON.stringify(layoutExport(plan, layout)))
    expect(out).toMatchObject({ format: 'placed-units', lengthUnit: 'm' })
    expect(out).toHaveProperty('units.length', layout.units.length)
    expect(out).toHaveProperty('lintels.length', layout.lintels.length)
  })
})
