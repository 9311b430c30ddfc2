import { useMemo } from 'react'
import { settingOutView } from '../../core/documents/drawings/setting-out-view.ts'
import { levelsView, tapeView } from '../../core/documents/drawings/tape-view.ts'
import type { CheckedLevel } from '../../core/geometry/level-check.ts'
import type { SettingOutStep } from '../../core/geometry/setting-out-steps.ts'
import type { TapeAdjustment } from '../../core/geometry/tape-check.ts'
import type { Peg } from '../../core/geometry/tape-network.ts'
import type { TapeToTake } from '../../core/geometry/tape-plan.ts'
import { FramedDrawing } from './FramedDrawing.tsx'

/** One step of pegging out from above. */
export function SettingOutDrawing({ step }: { readonly step: SettingOutStep }) {
  return <FramedDrawing drawing={useMemo(() => settingOutView(step), [step])} />
}

/** Pegs as taped over pegs as planned, errors drawn too large; the lengths to tape where nothing has been read yet. */
export function TapeDrawing({
  pegs,
  tapes,
  adjusted,
}: {
  readonly pegs: readonly Peg[]
  readonly tapes: readonly TapeToTake[]
  readonly adjusted: TapeAdjustment | null
}) {
  return <FramedDrawing taped drawing={useMemo(() => tapeView(pegs, tapes, adjusted), [pegs, tapes, adjusted])} />
}

/** How low each corner of the footing is. */
export function LevelsDrawing({
  pegs,
  corners,
}: {
  readonly pegs: readonly Peg[]
  readonly corners: readonly CheckedLevel[]
}) {
  return <FramedDrawing drawing={useMemo(() => levelsView(pegs, corners), [pegs, corners])} />
}
