import type { Finding, Remedy } from '../basics/finding.ts'
import { wholeModulesIn } from '../basics/count.ts'
import { clearSideRemedy, downToMm, handleRemedy, LEAST_HANDLE_M } from '../fish/tray-remedies.ts'
import type { Plan } from '../plan/schema.ts'
import { itemOf, type ItemKey } from '../quantities/items.ts'
import type { Terms } from './offers.ts'

/** What stands in the way of cutting; the rest of the list is bought all the same. */
const finding = (
  level: Finding['level'],
  kind: string,
  args: Finding['args'],
  card: Finding['card'],
  remedies: readonly Remedy[] = [],
): Finding => ({ level, kind, args, card, remedies })

/** A piece that no length on offer gives, with the sizes that would come out of the longest. */
export const pieceTooLong = (plan: Plan, item: ItemKey, lengthM: number, longestM: number): Finding =>
  finding(
    'problem',
    'buy.piece-too-long',
    { item: `item.${item}`, length: { value: lengthM, unit: 'm' }, longest: { value: longestM, unit: 'm' } },
    'money',
    item === 'rail' ? shorterRail(plan, lengthM - longestM) : item === 'cover-board' ? sheetCover(plan) : [],
  )

/** A rail by so much shorter: shorter handles while a hand still holds them, or a smaller chamber. */
function shorterRail({ trays, chambers }: Plan, byM: number): Remedy[] {
  const handleM = downToMm(trays.handleM - byM / 2)
  return [...(handleM < LEAST_HANDLE_M ? [] : handleRemedy(handleM)), ...smallerChamber(chambers.clearSideM - byM)]
}

/** The clear side brought down to whole centimetres. */
const smallerChamber = (mostM: number): Remedy[] => clearSideRemedy(wholeModulesIn(mostM, 0.01) / 100)

const sheetCover = ({ trays }: Plan): Remedy[] =>
  trays.cover === 'sheet' ? [] : [{ kind: 'set-cover-sheet', args: {}, set: { 'trays.cover': 'sheet' } }]

/** Offers of a roll or sheet that do not say how wide it is; the usual width of the trade is offered. */
export function widthMissing(item: ItemKey, offers: readonly Pick<Terms, 'id'>[]): Finding {
  const widthM = itemOf(item).widthM
  const named = offers.flatMap(({ id }) => (id === null ? [] : [id]))
  return finding(
    'problem',
    'buy.width-missing',
    { item: `item.${item}` },
    'money',
    widthM === undefined || named.length === 0
      ? []
      : [
          {
            kind: 'set-width',
            args: { width: { value: widthM, unit: 'm' } },
            set: Object.fromEntries(named.map((id) => [`offers.${id}.widthM`, widthM])),
          },
        ],
  )
}

/** Whole rolls so short that no square comes out of one, with the chamber whose squares would. */
export const rollTooShort = (plan: Plan, item: ItemKey, sideM: number, longestM: number): Finding =>
  finding(
    'problem',
    'buy.roll-too-short',
    { item: `item.${item}`, side: { value: sideM, unit: 'm' } },
    'money',
    smallerChamber(plan.chambers.clearSideM - (sideM - longestM)),
  )

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
