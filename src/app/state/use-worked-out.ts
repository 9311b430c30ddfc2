import { useDeferredValue } from 'react'
import type { Plan } from '../../core/plan/schema.ts'
import { cutMemory } from '../../core/purchase/cut-memory.ts'
import { rememberingMasonry, workOut, type WorkedOut } from '../../core/work-out.ts'
import { useApp } from './use-app.ts'

const remembered = new WeakMap<Plan, WorkedOut>()
const masonryFor = rememberingMasonry()
const effort = { known: cutMemory() }

/** Everything that follows from a plan, worked out once for as long as the plan is in use. */
export function workedOut(plan: Plan): WorkedOut {
  const known = remembered.get(plan)
  if (known !== undefined) return known
  const worked = workOut(plan, masonryFor, effort)
  remembered.set(plan, worked)
  return worked
}

/**
 * Everything that follows from the open plan; null while none is open. It may be one step behind what was just typed or stepped: the box answers
 * at once, and drawing and money follow as soon as they are worked out.
 */
export function useWorkedOut(): WorkedOut | null {
  const plan = useDeferredValue(useApp((state) => state.open?.plan ?? null))
  return plan === null ? null : workedOut(plan)
}
