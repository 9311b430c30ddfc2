import { newPlan } from '../../../../src/core/plan/defaults.ts'
import type { Drawing, Point, Shape } from '../../../../src/core/documents/drawings/drawing.ts'
import { workOut, type WorkedOut } from '../../../../src/core/work-out.ts'

/** A plan of so many chambers in one unit of the catalogue, worked out. */
export function kilnOf(count: number, unitKey: string): WorkedOut {
  const plan = newPlan({
    id: 'drawn',
    name: 'Drawn',
    freshKgPerDay: 40 * count,
    unitKey,
    soil: 'sand-dense',
    currency: { code: 'XOF', digits: 0 },
  })
  return workOut({ ...plan, chambers: { ...plan.chambers, count } })
}

export const KILNS = [
  [1, 'hollow-450-150-225'],
  [2, 'hollow-450-150-225'],
  [2, 'brick-215-102-65'],
  [4, 'earth-290-140-90'],
  [8, 'hollow-390-140-190'],
] as const

export const dimensionsOf = ({ shapes }: Drawing) =>
  shapes.filter((shape): shape is Extract<Shape, { kind: 'dimension' }> => shape.kind === 'dimension')

export const areasOf = ({ shapes }: Drawing) =>
  shapes.filter((shape): shape is Extract<Shape, { kind: 'area' }> => shape.kind === 'area')

/** Area of a closed ring by the shoelace formula. */
export const ringArea = (ring: readonly Point[]): number =>
  Math.abs(
    ring.reduce((sum, [x0, y0], index) => {
      const [x1, y1] = ring[(index + 1) % ring.length] ?? [0, 0]
      return sum + (x0 * y1 - x1 * y0) / 2
    }, 0),
  )
