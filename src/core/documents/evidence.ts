import * as z from 'zod/mini'
import checksJson from '../../../shared/checks.json' with { type: 'json' }
import disagreementsJson from '../../../shared/disagreements.json' with { type: 'json' }
import unsourcedJson from '../../../shared/unsourced.json' with { type: 'json' }
import { UNITS, type Unit } from '../basics/unit.ts'
import { SOURCES, type SourceId } from '../sources/sources.ts'

const unit = z.enum(Object.keys(UNITS) as [Unit, ...Unit[]])
const source = z.enum(Object.keys(SOURCES) as [SourceId, ...SourceId[]])

/** Rooms of the register, in the order they are shown. */
export const CHECK_PLACES = ['ground', 'walls', 'mixes', 'trays', 'fish', 'heat', 'work'] as const

const checksSchema = z.object({
  checks: z.array(
    z.object({
      id: z.string(),
      place: z.enum(CHECK_PLACES),
      expected: z.number(),
      unit,
      /** How far our own number may lie from the expected one. */
      within: z.number(),
      why: z.enum(['exact', 'printed', 'units', 'rounded', 'scatter', 'schedule', 'line', 'scheme']),
      source,
    }),
  ),
})
const disagreementsSchema = z.object({
  disagreements: z.array(z.object({ id: z.string(), sources: z.array(source) })),
})
const unsourcedSchema = z.array(
  z.object({
    id: z.string(),
    args: z.exactOptional(z.record(z.string(), z.union([z.string(), z.number()]))),
    kind: z.enum(['practice', 'memory']),
    unit,
    least: z.number(),
    most: z.number(),
  }),
)

/** Figures from outside that the product's own are held against in every release; `tests/reference/register.test.ts` does it. */
export const { checks: CHECKS } = checksSchema.parse(checksJson)
/** Where published sources disagree. */
export const { disagreements: DISAGREEMENTS } = disagreementsSchema.parse(disagreementsJson)
/** Figures that no print gives, with the values they take over many plans; `tests/reference/unsourced.test.ts` gathers them. */
export const UNSOURCED = unsourcedSchema.parse(unsourcedJson)

export type Check = (typeof CHECKS)[number]
export type UnsourcedFigure = (typeof UNSOURCED)[number]
