import type { PurchaseLine } from '../../../core/purchase/line.ts'
import { isItemKey, itemOf } from '../../../core/quantities/items.ts'
import { readFigure } from '../../words/figure.ts'
import type { Words } from '../../words/words.ts'
import type { FieldWay } from '../fields/field-way.ts'

const MOST = 1e6

/** How an item is counted where it is bought: by the lot it is sold in, or by its own unit where the lot is one. `perLot` is in the item's unit. */
export interface PayLot {
  readonly perLot: number
  readonly way: FieldWay
}

export function payLot(item: string, line: PurchaseLine | undefined, words: Words): PayLot {
  const unit = isItemKey(item) ? itemOf(item).unit : 'piece'
  const ownLot = line === undefined ? 1 : line.bought.value / line.lots.value
  const isByUnit = line === undefined || line.lotName === 'kg' || line.lotName === 'm3' || line.lotName === 'day'
  if (isByUnit) {
    return {
      perLot: 1,
      way: {
        limit: { min: 0, max: MOST, unit, step: ownLot },
        step: ownLot,
        show: (value) => words.figure(value, unit),
        read: (typed) => readFigure(typed, unit, words.show),
        keyboard: 'decimal',
      },
    }
  }
  return {
    perLot: ownLot,
    way: {
      limit: { min: 0, max: Math.floor(MOST / ownLot), unit: '1', step: 1 },
      step: 1,
      show: (value) => ({
        figure: words.number(value, 2),
        unit: words.named(`lot.${line.lotName}`, { count: value }),
      }),
      read: (typed) => readFigure(typed.replace(/\p{L}+$/u, ''), '1', words.show),
      keyboard: 'decimal',
    },
  }
}

/** Whole lots that are still missing of a line's item, at least one: what one is likely to have just bought. */
export function lotsStillMissing(line: PurchaseLine, missing: number, got: number): number {
  if (got <= 0) return line.lots.value
  const perLot = line.bought.value / line.lots.value
  return Math.max(1, Math.ceil(missing / perLot - 1e-9))
}

/** What so many lots cost by the list, in minor units; null where it has no price. */
export function plannedMinor(line: PurchaseLine | undefined, quantity: number): number | null {
  if (line === undefined || line.cost === null || line.bought.value <= 0) return null
  return Math.round((line.cost.value * quantity) / line.bought.value)
}
