import * as z from 'zod/mini'
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

/** What stands behind the product's numbers, and where nothing does. */
export interface Evidence {
  /** Figures from outside that the product's own are held against in every release; `tests/reference/register.test.ts` does it. */
  readonly checks: z.infer<typeof checksSchema>['checks']
  /** Where published sources disagree. */
  readonly disagreements: z.infer<typeof disagreementsSchema>['disagreements']
  /** Figures that no print gives, with the values they take over many plans; `tests/reference/unsourced.test.ts` gathers them. */
  readonly unsourced: z.infer<typeof unsourcedSchema>
}

/** The three files of `shared/` as evidence, checked. */
export const evidenceOf = (checks: unknown, disagreements: unknown, unsourced: unknown): Evidence => ({
  ...checksSchema.parse(checks),
  ...disagreementsSchema.parse(disagreements),
  unsourced: unsourcedSchema.parse(unsourced),
})

export type Check = Evidence['checks'][number]
export type UnsourcedFigure = Evidence['unsourced'][number]
