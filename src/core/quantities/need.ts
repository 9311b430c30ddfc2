import { derive, type Derived } from '../basics/derived.ts'
import type { ItemKey, ItemUnit } from './items.ts'

/** Which part of the kiln a need is for; money is told apart by the same parts. */
export type Section = 'ground' | 'walls' | 'heads' | 'fill' | 'trays' | 'shelter' | 'labour'
/** The parts in the order of the work. */
export const SECTIONS: readonly Section[] = ['ground', 'walls', 'heads', 'fill', 'trays', 'shelter', 'labour']

/** A length to be cut, and how many of it. `label` is a message key that says what it becomes. */
export interface Piece {
  readonly lengthM: number
  /** For a flat piece. */
  readonly widthM?: number
  readonly count: number
  readonly label: string
}

/** An amount of one item for one part of the kiln: net as it will stand in the work, the share lost on the way, and both together. */
export interface Need {
  readonly item: ItemKey
  readonly section: Section
  /** What it becomes, as the end of a message key: `use.<use>`. */
  readonly use: string
  readonly net: Derived
  readonly waste: Derived<'1'>
  readonly gross: Derived
  /** For things cut from stock: the pieces, spares for waste counted in. */
  readonly pieces?: readonly Piece[]
}

/** Gross = net and its waste; whole lots come only with buying. */
export function need<U extends ItemUnit>(
  item: ItemKey,
  section: Section,
  use: string,
  net: Derived<U>,
  waste: Derived<'1'>,
): Need {
  const gross = derive('need.gross', net.unit, 'n · (1 + w)', { n: net, w: waste }, (of) => of.n * (1 + of.w), {
    args: { item: `item.${item}` },
  })
  return { item, section, use, net, waste, gross }
}
