import type { Finding, Remedy } from '../basics/finding.ts'
import type { Plan } from '../plan/schema.ts'
import type { ItemKey } from '../quantities/items.ts'

/** What stands in the way of cutting; the rest of the list is bought all the same. */
const finding = (
  level: Finding['level'],
  kind: string,
  args: Finding['args'],
  card: Finding['card'],
  remedies: readonly Remedy[] = [],
): Finding => ({ level, kind, args, card, remedies })

export const pieceTooLong = (item: ItemKey, lengthM: number, longestM: number): Finding =>
  finding(
    'problem',
    'buy.piece-too-long',
    { item: `item.${item}`, length: { value: lengthM, unit: 'm' }, longest: { value: longestM, unit: 'm' } },
    'money',
  )

/** An offer of a roll or sheet that does not say how wide it is. */
export const widthMissing = (item: ItemKey): Finding =>
  finding('problem', 'buy.width-missing', { item: `item.${item}` }, 'money')

/** Whole rolls so short, or so narrow, that no square comes out of one. */
export const rollTooShort = (item: ItemKey, sideM: number): Finding =>
  finding('problem', 'buy.roll-too-short', { item: `item.${item}`, side: { value: sideM, unit: 'm' } }, 'money')

/** A cover larger than any sheet: its parts need a rail under each joint. */
export function coverJoined({ trays }: Plan, sideM: number, parts: number): Finding {
  const boards: Remedy = { kind: 'set-cover-boards', args: {}, set: { 'trays.cover': 'board' } }
  const framed: Remedy = { kind: 'set-cover-framed', args: {}, set: { 'trays.cover': 'framed' } }
  return finding(
    'caution',
    'cover-joined',
    { side: { value: sideM, unit: 'm' }, parts },
    'trays',
    trays.cover === 'framed' ? [boards] : [framed, boards],
  )
}
