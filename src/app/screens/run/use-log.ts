import { useMemo } from 'react'
import type { Plan } from '../../../core/plan/schema.ts'
import { firingLog, type FiringLog } from '../../../core/schedule/firing-log.ts'
import { todayIso } from '../../words/dates.ts'

/** The log of the plan as of today. */
export function useLog(plan: Plan): FiringLog {
  const today = todayIso()
  return useMemo(() => firingLog(plan, today), [plan, today])
}
