import type { ReactElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { bulkOrder } from '../../../core/choosing/bulk-order.ts'
import { writeCsv } from '../../../core/documents/csv.ts'
import { parsePlan, type PlanProblem } from '../../../core/plan/parse-plan.ts'
import { workOut } from '../../../core/work-out.ts'
import '../../words/add-plan-words.ts'
import { WordsProvider } from '../../words/use-words.tsx'
import { wordsFor } from '../../words/words.ts'
import { listAsText } from '../buy/list-as-text.ts'
import { listCsv } from './list-rows.ts'
import { makeSheet, paperHead } from './make-sheets.ts'
import { resultData } from './result-data.ts'
import { SHEET_KINDS, type SheetHand } from './sheet-kind.ts'

/** What an office's command line asks of one plan; everything is the app's own. Entry of `npm run estimate`, never part of the app. */
export interface OfficePlan {
  readonly hand: SheetHand
  readonly text: (atMs: number) => string
  readonly csv: () => string
  readonly json: () => unknown
}

/** A plan's file or bare plan, checked at the same door as on a phone; what is wrong with it where it is none. */
export function officePlan(raw: unknown): OfficePlan | { readonly problems: readonly PlanProblem[] } {
  const bare = typeof raw === 'object' && raw !== null && 'plan' in raw ? raw.plan : raw
  const parsed = parsePlan(bare)
  if (!parsed.ok) return { problems: parsed.problems }
  const plan = parsed.value
  const show = { ...plan.show, currency: plan.currency }
  const words = wordsFor(show)
  const worked = workOut(plan)
  const ink = (drawing: ReactElement) => renderToStaticMarkup(<WordsProvider show={show}>{drawing}</WordsProvider>)
  const hand = { worked, words, ink }
  return {
    hand,
    text: (atMs) => listAsText(worked, words, atMs),
    csv: () => listCsv(worked, words),
    json: () => resultData(worked),
  }
}

/** All sheets of a plan, ready for the PDF writer. */
export const officeSheets = ({ hand }: OfficePlan, date: string) => ({
  sheets: SHEET_KINDS.map((kind) => makeSheet(kind, hand)),
  head: paperHead(hand, date),
})

/** The order for several kilns together, as separated values. */
export function officeBulk(plans: readonly OfficePlan[]): string {
  const lines = bulkOrder(plans.map(({ hand }) => hand.worked))
  const words = plans[0]?.hand.words
  const name = (key: string) => words?.named(key) ?? key
  return writeCsv(
    [
      ['item', 'make', 'needed', 'unit', 'lot size', 'lots apart', 'lots together'],
      ...lines.map(({ item, variant, gross, unit, lotSize, lotsApart, lotsTogether }) => [
        name(`item.${item}`),
        variant,
        String(Math.round(gross * 1000) / 1000),
        unit,
        String(lotSize),
        String(lotsApart),
        String(lotsTogether),
      ]),
    ],
    ',',
  )
}
