import type { WorkedOut } from '../../../core/work-out.ts'
import { useFieldInSight } from '../fields/use-field-in-sight.ts'
import { usePlan } from '../fields/plan-in-hand.ts'
import type { PlanRoute } from '../PlanHere.tsx'
import { cardHref, placeHref } from '../route.ts'
import { useCloseCard } from '../use-close-card.ts'
import { GiftSheet } from './GiftSheet.tsx'
import { GroupSheet } from './GroupSheet.tsx'
import { MemberSheet } from './MemberSheet.tsx'
import type { MoneyCard } from './money-card.ts'
import { PaySheet } from './PaySheet.tsx'
import { PayoutSheet } from './PayoutSheet.tsx'
import './spending.css'
import { SpendingSheet } from './SpendingSheet.tsx'

export interface MoneySheetProps {
  readonly worked: WorkedOut
  readonly planId: string
  readonly onClose: () => void
}

/** Where each sheet closes to. */
const HOME: Readonly<Record<MoneyCard['kind'], MoneyCard['kind'] | null>> = {
  pay: null,
  spending: null,
  group: null,
  paid: 'spending',
  member: 'group',
  gift: 'group',
  payout: 'group',
}

/** What opens over Buy about purchases and the group's money: loaded when the first of it is opened. */
export function MoneySheet({
  card: { kind, id },
  route,
  worked,
}: {
  readonly card: MoneyCard
  readonly route: PlanRoute
  readonly worked: WorkedOut
}) {
  const { plan } = usePlan()
  const home = HOME[kind]
  const onClose = useCloseCard(home === null ? placeHref(route.id, 'buy') : cardHref(route.id, 'buy', home))
  useFieldInSight(route.field)
  const props = { worked, planId: route.id, onClose }
  switch (kind) {
    case 'pay':
      return <PaySheet item={id ?? ''} id={null} {...props} />
    case 'paid': {
      const record = id === null ? undefined : plan.spending[id]
      // A record that another phone or tab took away while it was looked at.
      return record === undefined ? <SpendingSheet {...props} /> : <PaySheet item={record.item} id={id} {...props} />
    }
    case 'spending':
      return <SpendingSheet {...props} />
    case 'group':
      return <GroupSheet {...props} />
    case 'member':
      return <MemberSheet id={id} {...props} />
    case 'gift':
      return <GiftSheet id={id} {...props} />
    case 'payout':
      return <PayoutSheet id={id} {...props} />
    default:
      return kind satisfies never
  }
}
