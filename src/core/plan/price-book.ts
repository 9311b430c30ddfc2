import * as z from 'zod/mini'
import { bad, good, type Result } from '../basics/result.ts'
import { offerSchema, type Offer, type Plan } from './schema.ts'

export const PRICE_BOOK_FORMAT = 'kilnwright-prices'
export const PRICE_BOOK_VERSION = 1

/** Prices of one market, kept apart from plans so that the next plan can use them. Amounts are minor units of its currency. */
export const priceBookSchema = z.strictObject({
  format: z.literal(PRICE_BOOK_FORMAT),
  version: z.literal(PRICE_BOOK_VERSION),
  name: z.string().check(z.minLength(1), z.maxLength(80)),
  example: z.boolean(),
  currency: z.strictObject({
    code: z.string().check(z.regex(/^[A-Z]{3}$/)),
    digits: z.int().check(z.gte(0), z.lte(3)),
  }),
  offers: z.record(z.string().check(z.minLength(1), z.maxLength(60)), offerSchema),
})

export type PriceBook = z.infer<typeof priceBookSchema>

/** One price as a phone keeps it, with the currency it is in. */
export const bookPriceSchema = z.strictObject({
  currency: priceBookSchema.shape.currency,
  offer: offerSchema,
})
export type BookPrice = z.infer<typeof bookPriceSchema>
export type KeptPrice = BookPrice & { readonly id: string }

/** The prices in one currency as a book that can be written out or taken into a plan. */
export const bookOf = (name: string, currency: PriceBook['currency'], prices: readonly KeptPrice[]): PriceBook => ({
  format: PRICE_BOOK_FORMAT,
  version: PRICE_BOOK_VERSION,
  name,
  example: false,
  currency,
  offers: Object.fromEntries(
    prices.filter((one) => isSameCurrency(one.currency, currency)).map(({ id, offer }) => [id, offer]),
  ),
})

/** What must be written into a phone's book so that it knows these offers too: those that are new, and those seen later than before. */
export function pricesToKeep(
  known: readonly KeptPrice[],
  currency: PriceBook['currency'],
  found: Readonly<Record<string, Offer>>,
  idFor: (id: string) => string,
): KeptPrice[] {
  const before = bookOf('', currency, known).offers
  const after = withOffers(before, found, idFor)
  return Object.entries(after).flatMap(([id, offer]) =>
    isSameOffer(before[id], offer) ? [] : [{ id, currency, offer: { ...offer, chosen: false } }],
  )
}

export type PriceBookProblem =
  | { readonly kind: 'not-a-price-book' }
  | { readonly kind: 'other-currency'; readonly theirs: string; readonly ours: string }

/** The one door for a price book from a file. */
export function parsePriceBook(raw: unknown): Result<PriceBook, PriceBookProblem> {
  const checked = priceBookSchema.safeParse(raw)
  return checked.success ? good(checked.data) : bad({ kind: 'not-a-price-book' })
}

/** What makes two offers the same one seen twice: the thing, its lot, and who sells it where. */
export const offerMark = (offer: Offer): string =>
  [
    offer.item,
    offer.variant ?? '',
    offer.lotSize,
    offer.lotName,
    offer.widthM,
    offer.seller,
    offer.sellerName,
    offer.place,
  ].join('\n')

/**
 * Offers with others added. One that is known already, by its id or as the same thing of the same seller, is brought up to date and keeps
 * whether it was chosen; what was seen later stays. `idFor` names one that is new.
 */
function withOffers(
  known: Readonly<Record<string, Offer>>,
  found: Readonly<Record<string, Offer>>,
  idFor: (id: string) => string,
): Record<string, Offer> {
  const offers = { ...known }
  const ids = new Map(Object.entries(known).map(([id, offer]) => [offerMark(offer), id]))
  for (const [id, offer] of Object.entries(found)) {
    const at = Object.hasOwn(offers, id) ? id : (ids.get(offerMark(offer)) ?? idFor(id))
    const now = offers[at]
    if (now !== undefined && (now.seen ?? '') > (offer.seen ?? '')) continue
    offers[at] = { ...offer, chosen: now?.chosen ?? offer.chosen }
    ids.set(offerMark(offer), at)
  }
  return offers
}

/** Do two offers say the same in every field? */
export const isSameOffer = (one: Offer | undefined, other: Offer): boolean =>
  one !== undefined &&
  Object.keys({ ...one, ...other }).every((field) => one[field as keyof Offer] === other[field as keyof Offer])

/** The plan with the book's offers added; the user's choice among them is kept. Money is never converted. */
export function withPrices(plan: Plan, book: PriceBook): Result<Plan, PriceBookProblem> {
  if (!isSameCurrency(book.currency, plan.currency))
    return bad({ kind: 'other-currency', theirs: book.currency.code, ours: plan.currency.code })
  return good({ ...plan, offers: withOffers(plan.offers, book.offers, (id) => id) })
}

/** Do two currencies share their name and the digits of their smallest coin? */
export const isSameCurrency = (one: PriceBook['currency'], other: PriceBook['currency']): boolean =>
  one.code === other.code && one.digits === other.digits
