import * as z from 'zod/mini'
import { day, key, label, wholeWithin, within } from './fields.ts'

/** How much of a course lies: so many of its units, in the order of laying. */
const laidSchema = z.strictObject({ units: wholeWithin('built.units'), day, who: label })

/** Where the top of a course truly came, from the ground at peg A. */
const risenSchema = z.strictObject({ topM: within('built.topM'), day, who: label })

/** Units that broke on the way or in the hand, beside those planned to be cut. */
const brokenSchema = z.strictObject({ units: wholeWithin('built.units'), day, who: label })

/** What was found and done on the site. Courses go by `c` and their number, tapes by their pegs (`A-B`), levels by their peg. */
export const builtSchema = z.strictObject({
  laid: z.record(key, laidSchema),
  risen: z.record(key, risenSchema),
  broken: z.record(key, brokenSchema),
  tapes: z.record(key, within('built.tapeM')),
  /** From the water in the tube down to the footing; `again` is the first peg read once more at the end. */
  levels: z.record(key, within('built.downM')),
  /** What things are measured with when mixing, and how damp the sand is: its height in a tin before and after settling under water. */
  batch: z.strictObject({
    measure: z.enum(['pan', 'bucket', 'barrow']),
    bucketM3: within('built.bucketM3'),
    bags: z.literal([0.5, 1, 2]),
    dampM: within('built.sandM'),
    settledM: within('built.sandM'),
  }),
})
