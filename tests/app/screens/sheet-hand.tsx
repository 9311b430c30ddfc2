import { readFileSync } from 'node:fs'
import type { ReactElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import type { SheetHand } from '../../../src/app/screens/sheets/sheet-kind.ts'
import '../../../src/app/words/add-plan-words.ts'
import { WordsProvider } from '../../../src/app/words/use-words.tsx'
import { wordsFor } from '../../../src/app/words/words.ts'
import { parsePlan } from '../../../src/core/plan/parse-plan.ts'
import { workOut } from '../../../src/core/work-out.ts'

export const EXAMPLES = ['one-chamber', 'two-chambers', 'three-chambers'] as const

/** Everything sheets are made from, for an example plan, in Node. */
export function handFor(example: (typeof EXAMPLES)[number]): SheetHand {
  const raw: unknown = JSON.parse(readFileSync(`shared/examples/${example}.json`, 'utf8'))
  const plan = parsePlan(raw)
  if (!plan.ok) throw new Error(`the example ${example} is no plan`)
  const show = { ...plan.value.show, currency: plan.value.currency }
  return {
    worked: workOut(plan.value),
    words: wordsFor(show),
    ink: (drawing: ReactElement) => renderToStaticMarkup(<WordsProvider show={show}>{drawing}</WordsProvider>),
  }
}

export const fonts = () => ({
  regular: new Uint8Array(readFileSync('src/device/paper/fonts/noto-sans-regular.ttf')),
  bold: new Uint8Array(readFileSync('src/device/paper/fonts/noto-sans-bold.ttf')),
})
