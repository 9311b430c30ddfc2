import { useMemo, useState } from 'react'
import { viewOf } from '../../../../core/documents/drawings/views.ts'
import type { WorkedOut } from '../../../../core/work-out.ts'
import { FramedDrawing } from '../../../drawings/FramedDrawing.tsx'
import { Segments } from '../../../parts/Picks.tsx'
import { useWords } from '../../../words/use-words.tsx'

const VIEWS = ['tray', 'tray-seat', 'tray-corner'] as const
const NAMES = {
  tray: 'sheets.tray-above',
  'tray-seat': 'sheets.tray-seat',
  'tray-corner': 'sheets.tray-corner',
} as const

/** The tray as it will be made: from above, on the wall with its setback from the fire, and a corner taken apart. */
export function TrayPicture({ worked }: { readonly worked: WorkedOut }) {
  const { say } = useWords()
  const [view, setView] = useState<(typeof VIEWS)[number]>('tray-seat')
  const drawing = useMemo(() => viewOf(view, worked, []), [view, worked])
  return (
    <div className="one-view own stack">
      <FramedDrawing drawing={drawing} mostHighU={200} />
      <Segments
        name={say('trays.views')}
        choices={VIEWS.map((key) => ({ key, label: say(NAMES[key]) }))}
        chosen={view}
        onChoose={setView}
      />
    </div>
  )
}
