import { useMemo } from 'react'
import { spendingAccount, type SpendingAccount } from '../../../core/costs/spending.ts'
import type { WorkedOut } from '../../../core/work-out.ts'

/** What was bought against what was planned. */
export const useSpending = ({ plan, purchase, costs }: WorkedOut): SpendingAccount =>
  useMemo(() => spendingAccount(plan, purchase.lines, costs), [plan, purchase.lines, costs])
