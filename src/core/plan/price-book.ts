import * as z from 'zod/mini'
import { bad, good, type Result } from '../basics/result.ts'
import { offerSchema, type Plan } from './schema.ts'

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

export type PriceBookProblem =
  | { readonly kind: 'not-a-price-book' }
  | { readonly kind: 'other-currency'; readonly theirs: string; readonly ours: string }

/** The one door for a price book from a file. */
export function parsePriceBook(raw: unknown): Result<PriceBook, PriceBookProblem> {
  const checked = priceBookSchema.safeParse(raw)
  return checked.success ? good(checked.data) : bad({ kind: 'not-a-price-book' })
}

/** The plan with the book's offers added; an offer of the same id is brought up to date, the user's choice of it kept. Money is never converted. */
export function withPrices(plan: Plan, book: PriceBook): Result<Plan, PriceBookProblem> {
  if (book.currency.code !== plan.currency.code || book.currency.digits !== plan.currency.digits)
    return bad({ kind: 'other-currency', theirs: book.currency.code, ours: plan.currency.code })
  const offers = { ...plan.offers }
  for (const [id, offer] of Object.entries(book.offers))
    offers[id] = { ...offer, chosen: offers[id]?.chosen ?? offer.chosen }
  return good({ ...plan, offers })
}
