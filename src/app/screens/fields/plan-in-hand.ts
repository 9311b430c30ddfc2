import { createContext, use } from 'react'
import type { Derived } from '../../../core/basics/derived.ts'
import type { Plan } from '../../../core/plan/schema.ts'

/** What can be done to the open plan; it stays the same while the plan changes, so that nothing is drawn anew for it. */
export interface PlanHand {
  /** Writes fields by their paths as one undoable change; false where the whole plan refuses it. */
  readonly set: (fields: Readonly<Record<string, unknown>>) => boolean
  readonly edit: (change: (plan: Plan) => Plan) => boolean
  readonly showWorking: (derived: Derived) => void
}

export const PlanHandContext = createContext<PlanHand | null>(null)
export const PlanContext = createContext<Plan | null>(null)

/** The ways to change the open plan and to a number's working, below the screen that opened it. */
export function usePlanHand(): PlanHand {
  const hand = use(PlanHandContext)
  if (hand === null) throw new Error('no plan in hand here')
  return hand
}

/** The open plan as it was just typed, and the ways to change it. */
export function usePlan(): PlanHand & { readonly plan: Plan } {
  const hand = usePlanHand()
  const plan = use(PlanContext)
  if (plan === null) throw new Error('no plan in hand here')
  return { ...hand, plan }
}
