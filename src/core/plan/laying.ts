import * as z from 'zod/mini'

const parity = z.union([z.literal(0), z.literal(1)])
const place = z.enum(['any', 'first', 'last', 'middle', 'ends', 'bays', 'half-bays'])
const small = z.int().check(z.gte(-100), z.lte(1000))
const bearing = z.number().check(z.gte(0), z.lte(10))

/**
 * How a longer search has the walls laid, so that every phone lays the same: junctions, places of cuts, runs filled otherwise.
 * `walls` says for which walls it was found; a plan whose walls have changed since is laid by the quick search again.
 */
export const layingSchema = z.strictObject({
  walls: z.string().check(z.maxLength(600)),
  thorough: z.boolean(),
  owns: z.array(parity).check(z.maxLength(6)),
  cutPlaces: z.strictObject({ front: place, back: place, left: place, right: place, divider: place }),
  starts: z.strictObject({ back: parity, left: parity, right: parity, divider: parity }),
  exchanges: z
    .array(
      z.strictObject({
        wall: z.enum(['front', 'back', 'left', 'right', 'divider']),
        course: small,
        track: small,
        run: small,
        lengthsUm: z.array(z.int().check(z.gte(1), z.lte(2_000_000))).check(z.maxLength(80)),
      }),
    )
    .check(z.maxLength(400)),
  bearingM: z.strictObject({ outer: bearing, inner: bearing }),
})
