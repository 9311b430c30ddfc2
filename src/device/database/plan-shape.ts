import type * as z from 'zod/mini'
import { planSchema } from '../../core/plan/schema.ts'

/**
 * Parts of a plan that only make sense together, so that two phones' answers must never be mixed: half of one mortar and half of another is neither.
 * They are kept as one value; everything else is kept field by field.
 */
const AS_ONE: ReadonlySet<string> = new Set(['currency', 'walls.unit', 'walls.joint', 'mixes.concrete', 'mixes.mortar'])

interface PlanRecord {
  readonly path: string
  /** Entries change field by field; where an entry can be of several kinds, its fields only make sense together and it changes as a whole. */
  readonly isByField: boolean
}

interface PlanShape {
  /** Paths of the fields that change as one value each. */
  readonly leaves: readonly string[]
  /** Collections by id; each entry comes and goes as a whole. */
  readonly records: readonly PlanRecord[]
}

function shapeOf(schema: z.core.$ZodType, path: string): PlanShape {
  const { def } = schema._zod
  if (def.type === 'record') {
    const { valueType } = (schema as z.core.$ZodRecord)._zod.def
    return { leaves: [], records: [{ path, isByField: valueType._zod.def.type === 'object' }] }
  }
  if (def.type !== 'object' || AS_ONE.has(path)) return { leaves: [path], records: [] }
  const parts = Object.entries((schema as z.core.$ZodObject)._zod.def.shape).map(([key, part]) =>
    shapeOf(part, path === '' ? key : `${path}.${key}`),
  )
  return { leaves: parts.flatMap((part) => part.leaves), records: parts.flatMap((part) => part.records) }
}

/** Read from the schema, so that a new field of the plan is kept without a word here. */
export const PLAN_SHAPE = shapeOf(planSchema, '')
