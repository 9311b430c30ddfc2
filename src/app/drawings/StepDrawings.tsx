import { useMemo } from 'react'
import { planView } from '../../core/documents/drawings/plan-view.ts'
import { sectionView } from '../../core/documents/drawings/section-view.ts'
import { frontView } from '../../core/documents/drawings/front-view.ts'
import { trayCornerView, traySeatView, trayView } from '../../core/documents/drawings/tray-view.ts'
import type { TaskKind } from '../../core/schedule/tasks.ts'
import type { WorkedOut } from '../../core/work-out.ts'
import { BoardDrawing } from './CuttingDrawing.tsx'
import { FramedDrawing } from './FramedDrawing.tsx'

/** What to look at while a task is in hand; nothing where the task has no drawing of its own. */
export function StepDrawings({ task, worked }: { readonly task: TaskKind; readonly worked: WorkedOut }) {
  switch (task) {
    case 'set-out':
      return <PlanDrawn worked={worked} />
    case 'dig':
    case 'footing':
    case 'walls-below':
    case 'backfill':
    case 'fill':
    case 'slabs':
    case 'first-fires':
      return <SectionDrawn worked={worked} />
    case 'cast-lintels':
    case 'walls':
    case 'heads':
    case 'faces':
      return <FrontDrawn worked={worked} />
    case 'trays':
      return <TraysDrawn worked={worked} />
    case 'lintel-wait':
    case 'footing-wait':
    case 'lift-wait':
    case 'curing':
      return null
    default:
      return task satisfies never
  }
}

function PlanDrawn({ worked }: { readonly worked: WorkedOut }) {
  return <FramedDrawing drawing={useMemo(() => planView(worked, []), [worked])} />
}

function SectionDrawn({ worked }: { readonly worked: WorkedOut }) {
  return <FramedDrawing drawing={useMemo(() => sectionView(worked, worked.layout), [worked])} />
}

function FrontDrawn({ worked }: { readonly worked: WorkedOut }) {
  return <FramedDrawing drawing={useMemo(() => frontView(worked, worked.layout, []), [worked])} />
}

function TraysDrawn({ worked }: { readonly worked: WorkedOut }) {
  const drawings = useMemo(() => [trayView(worked), traySeatView(worked), trayCornerView(worked)], [worked])
  const patterns = worked.purchase.cutting.get('rail')?.patterns ?? []
  return (
    <div className="stack">
      {drawings.map((drawing) => (
        <FramedDrawing key={drawing.label.key} drawing={drawing} />
      ))}
      {patterns.map((pattern, index) => (
        <BoardDrawing key={index} pattern={pattern} />
      ))}
    </div>
  )
}
