import { useRef, useState } from 'react'
import type { WorkedOut } from '../../../core/work-out.ts'
import { Button } from '../../parts/Button.tsx'
import { Segments } from '../../parts/Picks.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { canShareFiles, pdfFile, saveFile, sendFile, type PaperSize } from '../../state/paper-actions.ts'
import { showDay } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import type { PlanRoute } from '../PlanHere.tsx'
import { placeHref } from '../route.ts'
import { useCloseCard } from '../use-close-card.ts'
import { inkOnPage } from './ink-on-page.tsx'
import { makeSheet, paperHead } from './make-sheets.ts'
import { SHEET_KINDS, type SheetKind } from './sheet-kind.ts'
import './sheets.css'
import { Tables } from './Tables.tsx'

/** What each place hands out first. */
const USUAL: Readonly<Record<PlanRoute['place'], readonly SheetKind[]>> = {
  plan: ['materials', 'setting-out', 'courses', 'trays', 'costs', 'schedule', 'first-fire'],
  buy: ['materials'],
  build: ['setting-out', 'courses', 'gauge-rod', 'trays', 'schedule'],
  run: ['first-fire'],
}

type Work =
  | { readonly kind: 'idle' }
  | { readonly kind: 'making'; readonly share: number }
  | { readonly kind: 'told'; readonly key: string; readonly file?: string }

/** Choose sheets, make them into one PDF on this phone, save or send it; and the same results as tables and data. */
export function SheetsSheet({ route, worked }: { readonly route: PlanRoute; readonly worked: WorkedOut }) {
  const words = useWords()
  const { say, named, number } = words
  const close = useCloseCard(placeHref(route.id, route.place))
  const [chosen, setChosen] = useState<ReadonlySet<SheetKind>>(new Set(USUAL[route.place]))
  const [size, setSize] = useState<PaperSize>('a4')
  const [work, setWork] = useState<Work>({ kind: 'idle' })
  const isStopped = useRef(false)

  const make = async (deliver: (file: File) => Promise<Work> | Work) => {
    isStopped.current = false
    setWork({ kind: 'making', share: 0 })
    const page = inkOnPage({ ...worked.plan.show, currency: worked.plan.currency })
    try {
      const hand = { worked, words, ink: page.ink }
      const sheets = SHEET_KINDS.filter((kind) => chosen.has(kind)).map((kind) => makeSheet(kind, hand))
      const file = await pdfFile(
        worked.plan.name,
        sheets,
        paperHead(hand, showDay(Date.now())),
        size,
        async (share) => {
          setWork({ kind: 'making', share })
          await nextFrame()
          return !isStopped.current
        },
      )
      setWork(file === null ? { kind: 'told', key: 'sheets.stopped' } : await deliver(file))
    } catch {
      setWork({ kind: 'told', key: 'sheets.save-failed' })
    } finally {
      page.done()
    }
  }
  const save = (file: File): Work => {
    saveFile(file)
    return { kind: 'told', key: 'sheets.saved', file: file.name }
  }
  const send = async (file: File): Promise<Work> => {
    const outcome = await sendFile(file)
    const keys = { shared: 'sheets.shared', cancelled: 'sheets.share-cancelled', failed: 'sheets.share-refused' }
    return { kind: 'told', key: keys[outcome] }
  }
  const isMaking = work.kind === 'making'
  const isNone = chosen.size === 0
  return (
    <Sheet title={say('sheets.title')} closeLabel={say('app.close')} onClose={close} height="full">
      <fieldset className="stack">
        <legend className="picks-name">{say('sheets.which')}</legend>
        {SHEET_KINDS.map((kind) => (
          <label key={kind} className="sheet-pick">
            <input
              type="checkbox"
              checked={chosen.has(kind)}
              onChange={({ target }) => {
                const next = new Set(chosen)
                if (target.checked) next.add(kind)
                else next.delete(kind)
                setChosen(next)
              }}
            />
            <span>{say(`sheets.kind.${kind}`)}</span>
          </label>
        ))}
      </fieldset>
      <Segments
        name={say('sheets.paper')}
        choices={[
          { key: 'a4', label: say('sheets.a4') },
          { key: 'a5', label: say('sheets.a5') },
        ]}
        chosen={size}
        onChoose={setSize}
      />
      {isMaking ? (
        <div className="work">
          <p role="status">{`${say('sheets.making')} ${number(Math.round(work.share * 100))} %`}</p>
          <Button
            onPress={() => {
              isStopped.current = true
            }}
          >
            {say('sheets.stop')}
          </Button>
        </div>
      ) : (
        <div className="choices">
          <Button tone="fire" shape="big" icon="print" disabled={isNone} onPress={() => void make(save)}>
            {isNone ? say('sheets.none') : say('sheets.save')}
          </Button>
          {canShareFiles() && !isNone && (
            <Button shape="big" icon="share" onPress={() => void make(send)}>
              {say('sheets.send')}
            </Button>
          )}
        </div>
      )}
      <p role="status" className="told">
        {work.kind === 'told' ? named(work.key, { file: work.file ?? '' }) : ''}
      </p>
      <Tables worked={worked} />
    </Sheet>
  )
}

/** Lets the screen show how far the work is and hear Stop. */
const nextFrame = (): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, 0)
  })
