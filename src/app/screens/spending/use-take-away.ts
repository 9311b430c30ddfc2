import { setOpenField } from '../../state/actions.ts'
import { notify } from '../../state/notices.ts'
import { usePlan } from '../fields/plan-in-hand.ts'
import { valueAt } from '../fields/value-at.ts'

/** Takes a record of the plan away and closes its sheet; the notice brings it back. `what` names it. */
export function useTakeAway(onClose: () => void): (path: string, what: string) => void {
  const { plan, set } = usePlan()
  return (path, what) => {
    const record = valueAt(plan, path)
    set({ [path]: undefined })
    onClose()
    notify({
      key: 'spent.taken-away',
      args: { what },
      undo: () => {
        setOpenField(plan.id, path, record)
      },
    })
  }
}
