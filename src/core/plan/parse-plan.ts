import { bad, good, type Result } from '../basics/result.ts'
import { MIGRATIONS } from './migrations.ts'
import { PLAN_FORMAT, PLAN_VERSION, planSchema, type Plan } from './schema.ts'

/** Why something is not a plan that this app can use. */
export type PlanProblem =
  | { readonly kind: 'not-a-plan' }
  | { readonly kind: 'newer'; readonly theirVersion: number; readonly ourVersion: number }
  | { readonly kind: 'damaged'; readonly field: string; readonly reason: string }

const isObject = (raw: unknown): raw is Record<string, unknown> =>
  typeof raw === 'object' && raw !== null && !Array.isArray(raw)

/** The one door through which outside data becomes a plan: is it ours, is it newer than us, lift it to our version, check every field. */
export function parsePlan(raw: unknown): Result<Plan, PlanProblem> {
  if (!isObject(raw) || raw['format'] !== PLAN_FORMAT) return bad({ kind: 'not-a-plan' })
  const version = raw['version']
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return bad({ kind: 'damaged', field: 'version', reason: 'invalid_type' })
  if (version > PLAN_VERSION) return bad({ kind: 'newer', theirVersion: version, ourVersion: PLAN_VERSION })
  let lifted: Record<string, unknown> = raw
  for (const lift of MIGRATIONS.slice(version - 1)) lifted = lift(lifted)
  const checked = planSchema.safeParse(lifted)
  if (checked.success) return crossChecked(checked.data)
  return bad(
    ...checked.error.issues.map((issue) => ({
      kind: 'damaged' as const,
      field: issue.path.map(String).join('.'),
      reason: issue.code,
    })),
  )
}

/** What no single field can say: the joint's limits in order, the fish no drier before than after, something in each mix that binds. */
function crossChecked(plan: Plan): Result<Plan, PlanProblem> {
  const problems: PlanProblem[] = []
  const { minM, usualM, maxM } = plan.walls.joint
  if (!(minM <= usualM && usualM <= maxM)) problems.push({ kind: 'damaged', field: 'walls.joint', reason: 'order' })
  if (plan.catch.moistureFinal >= plan.catch.moistureFresh)
    problems.push({ kind: 'damaged', field: 'catch.moistureFinal', reason: 'order' })
  const { concrete, mortar } = plan.mixes
  if (concrete.cement === 0) problems.push({ kind: 'damaged', field: 'mixes.concrete', reason: 'no-binder' })
  if (mortar.cement + mortar.clay === 0) problems.push({ kind: 'damaged', field: 'mixes.mortar', reason: 'no-binder' })
  return problems.length === 0 ? good(plan) : bad(...problems)
}
