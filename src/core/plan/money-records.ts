import * as z from 'zod/mini'
import { within, label, key, minor, day } from './fields.ts'

/**
 * Money that left the box or a pocket for an item of the list. `quantity` is in the item's own unit; a return gives money and things back.
 * `instead` names what was bought where the listed thing was not to be had; `paidBy` is a member's id, or null for the group's box.
 */
export const spendingSchema = z.strictObject({
  kind: z.enum(['purchase', 'return']),
  item: key,
  quantity: within('spending.quantity'),
  paidMinor: minor,
  seller: z.enum(['block-maker', 'hardware', 'timber', 'sand-stone', 'labour']),
  sellerName: label,
  instead: label,
  note: z.exactOptional(label),
  day: z.nullable(day),
  paidBy: z.nullable(key),
  /** Id of a photo kept on this phone. */
  receipt: z.nullable(key),
})

/** What a member promised and gave. Material is counted at a worth agreed in the group, labour in days at a stated rate. */
export const contributionSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.enum(['cash', 'material']),
    member: key,
    promisedMinor: minor,
    givenMinor: minor,
    note: label,
    day: z.nullable(day),
  }),
  z.strictObject({
    kind: z.literal('labour'),
    member: key,
    promisedDays: within('contribution.days'),
    givenDays: within('contribution.days'),
    rateMinor: minor,
    note: label,
    day: z.nullable(day),
  }),
])

/** Names stay on the phones of the group; `weight` is the member's share where costs are divided. */
export const memberSchema = z.strictObject({ name: label, weight: within('member.weight') })

/** Money paid out of the box to a member: what was owed for things paid from the own pocket, or a share given back. */
export const payoutSchema = z.strictObject({ member: key, amountMinor: minor, day: z.nullable(day) })

export type Spending = z.infer<typeof spendingSchema>
export type Contribution = z.infer<typeof contributionSchema>
