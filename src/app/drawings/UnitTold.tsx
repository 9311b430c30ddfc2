import type { ViewKey } from '../../core/documents/drawings/views.ts'
import type { PlacedUnit } from '../../core/layout/contract.ts'
import type { WorkedOut } from '../../core/work-out.ts'
import { useWords } from '../words/use-words.tsx'
import { viewName } from './view-name.ts'

/** What a tapped unit is: kind, size, cut, course and wall, and whether fill goes through its hollows. */
export function UnitTold({
  unit,
  worked,
  view,
}: {
  readonly unit: PlacedUnit | null
  readonly worked: WorkedOut
  readonly view: ViewKey
}) {
  const words = useWords()
  const { named, sizes, length } = words
  const canTell = /^(front|back|left|right|inside|divider|course)/.test(view)
  if (unit === null && !canTell) return null
  if (unit === null)
    return (
      <p className="told quiet" aria-live="polite">
        {named('drawing.tap-unit')}
      </p>
    )
  const { lengthM, widthM, heightM } = worked.plan.walls.unit
  const own =
    unit.cutLengthM === null
      ? named(`drawing.unit.${unit.kind}`, { size: sizes(lengthM, widthM, heightM) })
      : named(`drawing.unit.${unit.kind}`, {
          length: length(unit.cutLengthM),
          size: sizes(unit.dxM, unit.dyM, unit.dzM),
        })
  const open = unit.cellsOpen.filter(Boolean).length
  return (
    <p className="told" aria-live="polite">
      <b>{own}</b>
      <br />
      {named('drawing.unit.place', {
        course: unit.course,
        wall: viewName(unit.wall, words).toLocaleLowerCase(),
      })}
      {unit.cellsOpen.length > 0 && (
        <>
          <br />
          {named('drawing.unit.cells', { open, count: unit.cellsOpen.length })}
        </>
      )}
    </p>
  )
}
