import { useRef, useState } from 'react'
import type { WorkedOut } from '../../../core/work-out.ts'
import { Button } from '../../parts/Button.tsx'
import { Segments } from '../../parts/Picks.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import {
  canShareFiles,
  pdfFile,
  saveFile,
  sendFile,
  type PaperSheet,
  type PaperSize,
} from '../../state/paper-actions.ts'
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
  /** `made` is a file that did not get out: it can go without being made again. */
  | { readonly kind: 'told'; readonly key: string; readonly file?: string; readonly made?: File }

/** Choose sheets, make them into one PDF on this phone, save or send it; and the same results as tables and data. */
export function SheetsSheet({ route, worked }: { readonly route: PlanRoute; readonly worked: WorkedOut }) {
  const words = useWords()
  const { say, named, number } = words
  const close = useCloseCard(placeHref(route.id, route.place))
  const [chosen, setChosen] = useState<ReadonlySet<SheetKind>>(
    () =>
      new Set(
        SHEET_KINDS.filter((kind) => (route.field === null ? USUAL[route.place].includes(kind) : kind === route.field)),
      ),
  )
  const [size, setSize] = useState<PaperSize>('a4')
  const [work, setWork] = useState<Work>({ kind: 'idle' })
  const isStopped = useRef(false)

  const make = async (deliver: (file: File) => Promise<Work> | Work) => {
    isStopped.current = false
    setWork({ kind: 'making', share: 0 })
    const page = inkOnPage({ ...worked.plan.show, currency: worked.plan.currency })
    try {
      const hand = { worked, words, ink: page.ink }
      const goOn = async (share: number) => {
        setWork({ kind: 'making', share })
        await nextFrame()
        return !isStopped.current
      }
      const kinds = SHEET_KINDS.filter((kind) => chosen.has(kind))
      const sheets: PaperSheet[] = []
      for (const [index, kind] of kinds.entries())
        if (await goOn((INKING * index) / kinds.length)) sheets.push(makeSheet(kind, hand))
      const file = await pdfFile(worked.plan.name, sheets, paperHead(hand, showDay(Date.now())), size, (share) =>
        goOn(INKING + (1 - INKING) * share),
      )
      setWork(file === null ? { kind: 'told', key: 'sheets.stopped' } : await deliver(file))
    } catch {
      setWork({ kind: 'told', key: 'sheets.not-made' })
    } finally {
      page.done()
    }
  }
  const save = (file: File): Work => {
    try {
      saveFile(file)
      return { kind: 'told', key: 'sheets.saved', file: file.name }
    } catch {
      return { kind: 'told', key: 'sheets.save-failed', made: file }
    }
  }
  const send = async (file: File): Promise<Work> => {
    const outcome = await sendFile(file)
    const keys = { shared: 'sheets.shared', cancelled: 'sheets.share-cancelled', failed: 'sheets.share-refused' }
    return { kind: 'told', key: keys[outcome], ...(outcome !== 'shared' && { made: file }) }
  }
  const made = work.kind === 'told' ? work.made : undefined
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
      {made !== undefined && (
        <div className="course-row">
          {canShareFiles() && (
            <Button icon="share" onPress={() => void send(made).then(setWork)}>
              {say('sheets.send-now')}
            </Button>
          )}
          <Button
            icon="print"
            onPress={() => {
              setWork(save(made))
            }}
          >
            {say('sheets.save-now')}
          </Button>
        </div>
      )}
      <Tables worked={worked} />
    </Sheet>
  )
}

/** Share of the work that is drawing; the rest is writing the file. */
const INKING = 0.5

/** Lets the screen show how far the work is and hear Stop. */
const nextFrame = (): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, 0)
  })
