import type * as z from 'zod/mini'
import { planSchema } from '../../core/plan/schema.ts'

/**
 * Parts of a plan that only make sense together, so that two phones' answers must never be mixed: half of one mortar and half of another is neither.
 * They are kept as one value; everything else is kept field by field.
 */
const AS_ONE: ReadonlySet<string> = new Set(['currency', 'walls.unit', 'walls.joint', 'mixes.concrete', 'mixes.mortar'])

interface PlanShape {
  /** Paths of the fields that change as one value each. */
  readonly leaves: readonly string[]
  /** Paths of collections by id; each entry comes and goes as a whole and changes field by field. */
  readonly records: readonly string[]
}

function shapeOf(schema: z.core.$ZodType, path: string): PlanShape {
  const { def } = schema._zod
  if (def.type === 'record') return { leaves: [], records: [path] }
  if (def.type !== 'object' || AS_ONE.has(path)) return { leaves: [path], records: [] }
  const parts = Object.entries((schema as z.core.$ZodObject)._zod.def.shape).map(([key, part]) =>
    shapeOf(part, path === '' ? key : `${path}.${key}`),
  )
  return { leaves: parts.flatMap((part) => part.leaves), records: parts.flatMap((part) => part.records) }
}

/** Read from the schema, so that a new field of the plan is kept without a word here. */
export const PLAN_SHAPE = shapeOf(planSchema, '')
