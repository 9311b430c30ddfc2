import { describe, expect, it } from 'vitest'
import type { PlacedUnit, UnitCell } from '../../../src/core/layout/contract.ts'
import { layOut } from '../../../src/core/layout/lay-out.ts'
import { request, UNITS } from './requests.ts'

interface Rectangle {
  readonly x0: number
  readonly y0: number
  readonly x1: number
  readonly y1: number
}

const cellAt = (unit: PlacedUnit, cell: UnitCell): Rectangle => {
  const [u0, v0] = unit.turn === 0 ? [unit.xM, unit.yM + unit.dyM / 2] : [unit.yM, unit.xM + unit.dxM / 2]
  const [a, b] = [u0 + cell.fromM, u0 + cell.fromM + cell.lengthM]
  const [c, d] = [v0 - cell.widthM / 2, v0 + cell.widthM / 2]
  return unit.turn === 0 ? { x0: a, x1: b, y0: c, y1: d } : { x0: c, x1: d, y0: a, y1: b }
}

const shared = (p: Rectangle, q: Rectangle): number =>
  Math.max(0, Math.min(p.x1, q.x1) - Math.max(p.x0, q.x0)) * Math.max(0, Math.min(p.y1, q.y1) - Math.max(p.y0, q.y0))

describe('cells that fill goes through', () => {
  it.each(['hollow450x150', 'hollow450x225', 'hollow390x140', 'hollow390x190'] as const)(
    '%s: open where at least half of the cell stands on cells of the course below, worked out afresh for every unit',
    (name) => {
      const { cells } = UNITS[name]
      const layout = layOut(request({ unit: UNITS[name], chambers: 2 }))
      let fillable = 0
      for (const { index } of layout.courses) {
        const here = layout.units.filter(({ course }) => course === index)
        const below = layout.units.filter(({ course }) => course === index - 1)
        const under = below.flatMap((unit) =>
          cells
            .filter((cell) => unit.cutLengthM === null || cell.fromM + cell.lengthM <= unit.cutLengthM + 1e-9)
            .map((cell) => cellAt(unit, cell)),
        )
        for (const unit of here)
          cells.forEach((cell, i) => {
            const place = cellAt(unit, cell)
            const area = cell.lengthM * cell.widthM
            const stands = under.reduce((sum, other) => sum + shared(place, other), 0)
            const there = unit.cutLengthM === null || cell.fromM + cell.lengthM <= unit.cutLengthM + 1e-9
            const open = there && (index === 1 || stands > area / 2 - 1e-9)
            expect(unit.cellsOpen[i]).toBe(open)
            if (open) fillable += area * unit.dzM
          })
      }
      expect(layout.fillableVoidM3).toBeCloseTo(fillable, 9)
      expect(fillable).toBeGreaterThan(0)
    },
  )

  it('a solid unit has none', () => {
    expect(layOut(request({ unit: UNITS.solid450x125 })).fillableVoidM3).toBe(0)
  })
})
