import { derive, sumOf, typed, type Derived } from '../basics/derived.ts'
import { wholeUp } from '../basics/count.ts'
import type { ItemKey } from './items.ts'
import { need, type Need, type Piece, type Section } from './need.ts'

/** Like pieces to be cut: their length and how many of them. */
export interface PieceGroup {
  readonly length: Derived<'m'>
  readonly count: Derived<'piece'>
  /** Message key of what they become. */
  readonly label: string
}

/**
 * Pieces to be cut from stock lengths. Net is their length together; waste is taken as whole spare pieces of each kind, since a spare centimetre
 * mends no broken rail.
 */
export function lengthsNeed(
  item: ItemKey,
  section: Section,
  use: string,
  groups: readonly PieceGroup[],
  waste: Derived<'1'>,
): Need {
  const runs = groups.map((group) =>
    derive('need.run', 'm', 'n · l', { n: group.count, l: group.length }, (of) => of.n * of.l, {
      args: { piece: group.label },
    }),
  )
  const [only] = runs
  const net =
    runs.length === 1 && only !== undefined ? only : sumOf('need.length', 'm', runs, { args: { item: `item.${item}` } })
  const pieces = groups.map(({ length, count, label }): Piece => ({
    lengthM: length.value,
    count: wholeUp(count.value * (1 + waste.value)),
    label,
  }))
  return { ...need(item, section, use, net, waste), pieces }
}

/** Share of timber lost or kept as spares. */
export const timberWaste = (share: number): Derived<'1'> => typed('waste.timber', '1', share, 'waste.timber')
