import type { Layout } from '../layout/contract.ts'
import type { WallUnit } from '../plan/schema.ts'

/** Area of a unit that mortar is laid on, m²: shells and webs, not the hollow cells. */
export const beddedAreaM2 = ({ lengthM, widthM, cells }: Pick<WallUnit, 'lengthM' | 'widthM' | 'cells'>): number =>
  cells.reduce((area, cell) => area - cell.lengthM * cell.widthM, lengthM * widthM)

/**
 * Area of hollow cells that stand on hollow cells, over all beds between courses, m². There the bed has no mortar and the fill runs through;
 * the bed on the footing is laid full.
 */
export function openBedAreaM2({ units, courses }: Pick<Layout, 'units' | 'courses'>, cells: WallUnit['cells']): number {
  if (cells.length === 0) return 0
  const lowest = courses.reduce((low, course) => Math.min(low, course.index), 1)
  let area = 0
  for (const { cellsOpen, course } of units) {
    if (course === lowest) continue
    for (const [at, open] of cellsOpen.entries()) {
      const cell = open ? cells[at] : undefined
      if (cell !== undefined) area += cell.lengthM * cell.widthM
    }
  }
  return area
}
