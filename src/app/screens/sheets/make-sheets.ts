import type { PaperHead, PaperSheet } from '../../state/paper-actions.ts'
import { costsSheet } from './costs-sheet.ts'
import { coursesSheet } from './courses-sheet.tsx'
import { firstFireSheet } from './first-fire-sheet.ts'
import { gaugeRodSheet } from './gauge-rod-sheet.ts'
import { materialsSheet } from './materials-sheet.ts'
import { scheduleSheet } from './schedule-sheet.tsx'
import { settingOutSheet } from './setting-out-sheet.tsx'
import type { SheetHand, SheetKind } from './sheet-kind.ts'
import { traysSheet } from './trays-sheet.tsx'

/** One sheet, from the same results as the screens. */
export function makeSheet(kind: SheetKind, hand: SheetHand): PaperSheet {
  switch (kind) {
    case 'materials':
      return materialsSheet(hand, true)
    case 'materials-blank':
      return materialsSheet(hand, false)
    case 'setting-out':
      return settingOutSheet(hand)
    case 'courses':
      return coursesSheet(hand)
    case 'gauge-rod':
      return gaugeRodSheet(hand)
    case 'trays':
      return traysSheet(hand)
    case 'costs':
      return costsSheet(hand)
    case 'schedule':
      return scheduleSheet(hand)
    case 'first-fire':
      return firstFireSheet(hand)
    default:
      return kind satisfies never
  }
}

/** What stands at the head and foot of every page. The revision is a short mark of the plan itself: the same plan has the same mark on every phone. */
export const paperHead = (
  { worked: { plan }, words }: Pick<SheetHand, 'worked' | 'words'>,
  date: string,
): PaperHead => ({
  plan: plan.name,
  language: 'en',
  date,
  revision: words.say('sheets.revision', { revision: markOf(JSON.stringify(plan)) }),
  foot: words.say(plan.example ? 'sheets.foot-example' : 'sheets.foot-plan'),
  page: (n, of) => words.say('sheets.page', { n: words.number(n), of: words.number(of) }),
})

/** Four signs that change when the plan does (FNV-1a, 32 bits, folded): enough to tell two printed sheets apart. */
function markOf(text: string): string {
  let hash = 0x811c9dc5
  for (let index = 0; index < text.length; index++) hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193)
  return ((hash >>> 16) ^ (hash & 0xffff)).toString(16).toUpperCase().padStart(4, '0')
}
