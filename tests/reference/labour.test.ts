import { describe, expect, it } from 'vitest'
import { soilOf } from '../../src/core/plan/catalogue.ts'
import { rate, waitDays } from '../../src/core/schedule/labour-data.ts'

const FOOT_M = 0.3048

describe('labour', () => {
  // NAVFAC P-405 in US Navy Builder manual 14045: 160 man-hours for 1,000 square feet of block wall, so 71.68 for 448.
  it('is 71.68 man-hours for 448 square feet of block', () => {
    expect(rate('block-mason', 'h/m2').value * 448 * FOOT_M ** 2).toBeCloseTo(71.68, 3)
  })
  it('lays 4.65 m² of block in a mason’s day of eight hours', () => {
    expect(8 / rate('block-mason', 'h/m2').value).toBeCloseTo(4.65, 2)
  })
  // NAVFAC P-405: a trench of up to 1 m by hand takes 1.20 h/m³ in sand, 2.20 in medium and 3.30 in heavy soil; backfill 1.00.
  it('digs and fills at the published hours', () => {
    expect(soilOf('sand-dense').digHoursPerM3).toBe(1.2)
    expect(soilOf('clay-firm').digHoursPerM3).toBe(2.2)
    expect(soilOf('clay-stiff').digHoursPerM3).toBe(3.3)
    expect(rate('backfill-labourer', 'h/m3').value).toBe(1)
  })
  // Estimating texts: brickwork 0.94 mason-day and 1.8 labourer-days per m³, hand-mixed mortar 0.75 labourer-day per m³, days of eight hours.
  it('lays bricks and mixes mortar at the published days', () => {
    expect(rate('brick-mason', 'h/m3').value / 8).toBeCloseTo(0.94, 12)
    expect(rate('brick-labourer', 'h/m3').value / 8).toBeCloseTo(1.8, 12)
    expect(rate('mortar-labourer', 'h/m3').value / 8).toBeCloseTo(0.75, 12)
  })
  it('cures concrete for seven days', () => expect(waitDays('curing').value).toBe(7))
})
