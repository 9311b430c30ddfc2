import { bookPriceSchema, type KeptPrice } from '../../core/plan/price-book.ts'
import { keeper } from './keeper.ts'

/** Every price of the phone's book that can be read; a damaged one hides none of the others. */
export async function keptPrices(): Promise<readonly KeptPrice[]> {
  const { shelf } = await keeper()
  return (await shelf.prices()).flatMap(({ id, price }) => {
    const checked = bookPriceSchema.safeParse(price)
    return checked.success ? [{ ...checked.data, id }] : []
  })
}

/** Keeps all of them or none; false where the phone refused. */
export async function keepPrices(prices: readonly KeptPrice[]): Promise<boolean> {
  const { shelf } = await keeper()
  return (await shelf.putPrices(prices.map(({ id, ...price }) => ({ id, price })))) === 'saved'
}

export async function forgetPrices(ids: readonly string[]): Promise<boolean> {
  const { shelf } = await keeper()
  return (await shelf.removePrices(ids)) === 'saved'
}
