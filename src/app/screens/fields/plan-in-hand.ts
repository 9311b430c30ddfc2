import { createContext, use } from 'react'
import type { Derived } from '../../../core/basics/derived.ts'
import type { Plan } from '../../../core/plan/schema.ts'

/** What every card and row of an open plan needs: the plan, ways to change it, and the way to a number's working. */
export interface PlanInHand {
  readonly plan: Plan
  /** Writes fields by their paths as one undoable change; false where the whole plan refuses it. */
  readonly set: (fields: Readonly<Record<string, unknown>>) => boolean
  readonly edit: (change: (plan: Plan) => Plan) => boolean
  readonly showWorking: (derived: Derived) => void
}

export const PlanInHandContext = createContext<PlanInHand | null>(null)

/** The open plan, below the screen that opened it. */
export function usePlan(): PlanInHand {
  const inHand = use(PlanInHandContext)
  if (inHand === null) throw new Error('no plan in hand here')
  return inHand
}
