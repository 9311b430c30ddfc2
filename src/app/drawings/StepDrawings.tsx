import { useMemo, useState } from 'react'
import { sectionView } from '../../core/documents/drawings/section-view.ts'
import { frontView } from '../../core/documents/drawings/front-view.ts'
import { trayCornerView, traySeatView, trayView } from '../../core/documents/drawings/tray-view.ts'
import { settingOut } from '../../core/geometry/setting-out.ts'
import type { TaskKind } from '../../core/schedule/tasks.ts'
import type { WorkedOut } from '../../core/work-out.ts'
import { Icon } from '../parts/Icon.tsx'
import { Slider } from '../parts/Slider.tsx'
import { useWords } from '../words/use-words.tsx'
import { BoardDrawing } from './CuttingDrawing.tsx'
import { FramedDrawing } from './FramedDrawing.tsx'
import { SettingOutDrawing, TapeDrawing } from './SettingOutDrawing.tsx'

/** What to look at while a task is in hand; nothing where the task has no drawing of its own. */
export function StepDrawings({ task, worked }: { readonly task: TaskKind; readonly worked: WorkedOut }) {
  switch (task) {
    case 'set-out':
      return <PeggingOut worked={worked} />
    case 'dig':
    case 'footing':
    case 'fill':
    case 'slabs':
      return <SectionDrawn worked={worked} />
    case 'heads':
      return <FrontDrawn worked={worked} />
    case 'trays':
      return <TraysDrawn worked={worked} />
    case 'cast-lintels':
    case 'lintel-wait':
    case 'footing-wait':
    case 'walls-below':
    case 'backfill':
    case 'walls':
    case 'lift-wait':
    case 'faces':
    case 'curing':
    case 'first-fires':
      return null
    default:
      return task satisfies never
  }
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

/** Pegging out one step at a time, and the lengths to tape in the end. */
function PeggingOut({ worked }: { readonly worked: WorkedOut }) {
  const { named, inLine } = useWords()
  const { geometry, site, plan } = worked
  const out = useMemo(
    () => settingOut(geometry, site.facing, plan.place.declinationDeg),
    [geometry, site, plan.place.declinationDeg],
  )
  const [at, setAt] = useState(0)
  const step = out.steps[at]
  const count = out.steps.length + 1
  const numbers = Object.fromEntries(
    Object.entries(step?.numbers ?? {}).map(([name, { value, unit }]) => [name, inLine(value, unit)]),
  )
  const text = step === undefined ? named('drawing.view.tapes') : named(`setout.${step.id}.title`, numbers)
  return (
    <div>
      {step === undefined ? (
        <TapeDrawing pegs={out.pegs} tapes={out.tapes} adjusted={null} />
      ) : (
        <SettingOutDrawing step={step} />
      )}
      <p className="course-text" aria-live="polite">
        {named('drawing.step-of', { number: at + 1, count })} {text}
      </p>
      {step !== undefined && <p>{named(`setout.${step.id}.text`, numbers)}</p>}
      {step?.id === 'front-line' && site.facing.front !== null && <p>{named('setout.front-line.bearing', numbers)}</p>}
      {step !== undefined && step.caution !== null && (
        <p className="caution-line">
          <Icon name="caution" />
          <span>{named(`setout.caution.${step.caution}`)}</span>
        </p>
      )}
      <Slider
        name={named('drawing.step-slider')}
        value={at}
        min={0}
        max={count - 1}
        text={text}
        less={named('drawing.step-less')}
        more={named('drawing.step-more')}
        onChange={setAt}
      />
    </div>
  )
}
