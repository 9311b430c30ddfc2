import { memo, useDeferredValue, useMemo, useRef } from 'react'
import { outlineOf } from '../../../core/geometry/outline.ts'
import type { Plan } from '../../../core/plan/schema.ts'
import { MiniKiln } from '../../drawings/MiniKiln.tsx'
import { Button } from '../../parts/Button.tsx'
import { Icon } from '../../parts/Icon.tsx'
import { useSeen } from '../../parts/use-seen.ts'
import type { PlanRow } from '../../state/app-state.ts'
import { isUnread } from '../../state/plan-rows.ts'
import { showWhen } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import { wordsFor } from '../../words/words.ts'
import { savePlanFile } from '../../state/save-plan-file.ts'
import { placeHref } from '../route.ts'
import { useNow } from '../use-now.ts'

/** Width of the widest picture, px, and the largest scale: a single small kiln is not blown up. */
const WIDEST_PX = 124
const MOST_PX_PER_M = 60

/** One scale for the whole list: the longest kiln just fits its picture. */
function scaleFor(rows: readonly PlanRow[]): number {
  const lengths = rows.flatMap(({ plan }) => (plan === null ? [] : [outlineOf(plan).outsideLength.value]))
  return Math.min(MOST_PX_PER_M, WIDEST_PX / Math.max(1, ...lengths))
}

/** As many as the largest screen shows at first: the page stands with these, and the others join them in pieces, so that a long list holds up no tap. */
const AT_FIRST = 12

/** Plans standing on their ground lines, newest first, all drawn to one scale; a picture is drawn when one comes near it. */
export function PlanShelf({
  rows,
  onTools,
}: {
  readonly rows: readonly PlanRow[]
  readonly onTools: (row: PlanRow) => void
}) {
  const unitsPerM = useMemo(() => scaleFor(rows), [rows])
  const nowMs = useNow()
  const read = useMemo(() => rows.filter((row) => !isUnread(row)), [rows])
  const shown = useDeferredValue(read, read.slice(0, AT_FIRST))
  return (
    <ul className="shelves">
      {shown.map((row, index) => (
        <Shelf
          key={row.id}
          row={row}
          unitsPerM={unitsPerM}
          nowMs={nowMs}
          isNearTop={index < AT_FIRST}
          onTools={onTools}
        />
      ))}
    </ul>
  )
}

interface ShelfProps {
  readonly row: PlanRow
  readonly unitsPerM: number
  readonly nowMs: number
  readonly isNearTop: boolean
  readonly onTools: (row: PlanRow) => void
}

const Shelf = memo(function Shelf({ row, unitsPerM, nowMs, isNearTop, onTools }: ShelfProps) {
  const { say } = useWords()
  const place = useRef<HTMLLIElement>(null)
  const isSeen = useSeen(place, isNearTop)
  return (
    <li ref={place} className="shelf">
      {row.plan === null ? (
        <Unreadable row={row} />
      ) : (
        <Readable row={row} plan={row.plan} unitsPerM={unitsPerM} nowMs={nowMs} isDrawn={isSeen} />
      )}
      {row.plan !== null && (
        <button
          type="button"
          className="shelf-tools"
          aria-label={say('front.more', { name: row.name })}
          onClick={() => {
            onTools(row)
          }}
        >
          <Icon name="more" />
        </button>
      )}
    </li>
  )
})

function Readable({
  row,
  plan,
  unitsPerM,
  nowMs,
  isDrawn,
}: {
  readonly row: PlanRow
  readonly plan: Plan
  readonly unitsPerM: number
  readonly nowMs: number
  readonly isDrawn: boolean
}) {
  const { say } = useWords()
  const words = wordsFor({ ...plan.show, currency: plan.currency })
  return (
    <a className="shelf-plan" href={placeHref(row.id, 'plan')}>
      <MiniKiln plan={plan} unitsPerM={unitsPerM} isDrawn={isDrawn} />
      <span className="shelf-words">
        <b>{row.name}</b>
        <span>
          {say('front.answer', { chambers: plan.chambers.count, mass: words.mass(plan.catch.freshKgPerDay) })}
        </span>
        <span className="quiet">
          {plan.example && `${say('front.is-example')} · `}
          {say('front.saved', { when: showWhen(row.savedAtMs, nowMs) })}
        </span>
      </span>
    </a>
  )
}

/** A plan that this version cannot read hides nothing: it keeps its place, and its data can be taken away as they are. */
function Unreadable({ row }: { readonly row: PlanRow }) {
  const { say } = useWords()
  return (
    <div className="shelf-plan">
      <span className="shelf-words">
        <b>{row.name}</b>
        <span>{say(row.trouble?.kind === 'newer' ? 'front.newer' : 'front.damaged')}</span>
        <Button icon="file" onPress={() => void savePlanFile(row.id)}>
          {say('front.take-copy')}
        </Button>
      </span>
    </div>
  )
}
