import { describe, expect, it } from 'vitest'
import { newPlan } from '../../src/core/plan/defaults.ts'
import type { Plan } from '../../src/core/plan/schema.ts'
import type { ItemKey } from '../../src/core/quantities/items.ts'
import type { Section } from '../../src/core/quantities/need.ts'
import { workOut } from '../../src/core/work-out.ts'

/**
 * One chamber of common practice, worked by hand: 1.00 m × 1.00 m over all, walls 160 mm, so 0.68 m clear; strip footing 100 mm wider on each
 * side and 100 mm thick; fire opening 350 × 350 mm under a lintel with 150 mm of bearing; eight trays of rails 20 × 60 mm set back 30 mm, handles
 * 120 mm; concrete 1:2:4 at 1.54.
 */
const fresh = newPlan({
  id: 'a',
  name: 'Common practice',
  freshKgPerDay: 25,
  unitKey: 'hollow-450-150-225',
  soil: 'sand-dense',
  currency: { code: 'XTS', digits: 0 },
})
const plan: Plan = {
  ...fresh,
  chambers: { count: 1, clearSideM: 0.68 },
  walls: { ...fresh.walls, unit: { ...fresh.walls.unit, widthM: 0.16 } },
  trays: { ...fresh.trays, battens: 1 },
}
const worked = () => workOut(plan)
const net = (item: ItemKey, section: Section): number =>
  worked()
    .needs.filter((one) => one.item === item && one.section === section)
    .reduce((sum, one) => sum + one.net.value, 0)

describe('a chamber of common practice, by hand', () => {
  // (1.20² − 0.48²) · 0.10 = 0.12096 m³; one cubic metre of 1:2:4 at 1.54 takes 316.8 kg, 0.44 m³, 0.88 m³ (worked example of the dry-volume method).
  it('footing: 0.12096 m³ of concrete, 38.32 kg, 0.0532 m³, 0.1064 m³', () => {
    expect(net('cement', 'ground')).toBeCloseTo(0.12096 * 316.8, 6)
    expect(net('sand', 'ground')).toBeCloseTo(0.12096 * 0.44, 9)
    expect(net('stone', 'ground')).toBeCloseTo(0.12096 * 0.88, 9)
  })

  // Farm-use concrete bulletin: two bars with 25 mm of cover. 0.35 + 2 · 0.15 − 2 · 0.025 = 0.60 m each, if the lintel is laid as asked.
  it('lintel: two bars of 0.60 m', () => {
    const [lintel] = worked().layout.lintels
    expect(worked().layout.lintels).toHaveLength(1)
    const longer = (lintel?.dxM ?? Number.NaN) - 0.65
    expect(longer).toBeGreaterThanOrEqual(-1e-6)
    expect(net('bar', 'heads')).toBeCloseTo(2 * (0.6 + longer), 6)
    const concreteM3 = (lintel?.dxM ?? 0) * 0.16 * (lintel?.dzM ?? 0)
    expect(net('cement', 'heads')).toBeCloseTo(concreteM3 * 316.8, 6)
  })

  // Frame 0.78 m: rails with handles 1.02, cross rails 0.74, batten 0.74; 2 · 1.02 + 2 · 0.74 + 0.74 = 4.26 m a tray, eight trays 34.08 m.
  it('trays: 34.08 m of rail, 8 · 0.78² m² of mesh, one cover of 0.78²', () => {
    expect(net('rail', 'trays')).toBeCloseTo(34.08, 9)
    expect(net('mesh', 'trays')).toBeCloseTo(8 * 0.78 ** 2, 9)
    expect(net('cover-sheet', 'trays')).toBeCloseTo(0.78 ** 2, 9)
  })

  // Eight squares of 0.78 one after the other from a roll of 0.90 m: 6.24 m, seven metres bought. One sheet of 2.44 × 1.22 gives the cover.
  it('mesh: 6.24 m of a 0.90 m roll, bought by the metre; one sheet', () => {
    const mesh = worked().purchase.lines.find(({ item }) => item === 'mesh')
    expect(mesh?.run?.value).toBeCloseTo(6.24, 9)
    expect(mesh?.lots.value).toBe(7)
    expect(worked().purchase.lines.find(({ item }) => item === 'cover-sheet')?.lots.value).toBe(1)
  })

  // Volumes close: what is not unit, lintel or opening is joint; beds over hollows that line up hold fill and no mortar.
  it('joints and fill share the wall with the units to the last cubic centimetre', () => {
    const open = worked().needs.find(({ use }) => use === 'joints')
    expect(open).toBeDefined()
    const cells = worked().layout.fillableVoidM3
    const fill = worked().needs.find(({ section }) => section === 'fill')?.net.value ?? Number.NaN
    // Dry sand tamped: 1682 kg/m³ against 1442 loose (US Navy and Army soil tables).
    const bedsOverHollows = fill / 1.166 - cells
    expect(bedsOverHollows).toBeGreaterThan(0)
    const mortar = worked().layout.mortarM3 - bedsOverHollows
    // 1:5 at 1.33: 1.33 / 6 · 1440 = 319.2 kg in a cubic metre.
    expect(net('cement', 'walls')).toBeCloseTo(mortar * 319.2, 6)
  })
})
