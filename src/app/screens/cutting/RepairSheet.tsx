import { useMemo, useState } from 'react'
import { repairOrder } from '../../../core/schedule/repair-order.ts'
import { traysToMend, type TrayRepair } from '../../../core/schedule/upkeep.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { MoneyRow } from '../../parts/MoneyRow.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { useWords } from '../../words/use-words.tsx'
import { itemName, lotsText, lotText } from '../buy/line-text.ts'
import { Caution } from '../build/Caution.tsx'
import { fieldWay } from '../fields/field-way.ts'
import { NumberField } from '../fields/PlanField.tsx'
import { Findings } from '../plan/Findings.tsx'
import type { PlanRoute } from '../PlanHere.tsx'
import { placeHref } from '../route.ts'
import { useCloseCard } from '../use-close-card.ts'
import { Worked } from '../working/Worked.tsx'
import { CutPlans } from './CutPlans.tsx'

const PARTS = ['trays', 'mesh', 'covers'] as const

/** A repair begins with what upkeep found bad; where nothing was, with one tray. */
function firstRepair(found: TrayRepair): TrayRepair {
  const isFound = found.trays + found.mesh + found.covers > 0
  return isFound ? found : { ...found, trays: 1 }
}

/** Years later: so many new trays, squares of mesh and covers, with a list for the market and a cutting plan of their own. */
export function RepairSheet({ route, worked }: { readonly route: PlanRoute; readonly worked: WorkedOut }) {
  const words = useWords()
  const { say } = words
  const { plan, tray } = worked
  const close = useCloseCard(placeHref(route.id, route.place))
  const [repair, setRepair] = useState(() => firstRepair(traysToMend(plan)))
  const order = useMemo(() => repairOrder(plan, tray, repair), [plan, tray, repair])
  const way = fieldWay('owned.count', words)
  return (
    <Sheet title={say('repair.title')} closeLabel={say('app.close')} onClose={close} height="full">
      <p className="quiet">{say('repair.intro')}</p>
      <div className="fields">
        {PARTS.map((part) => (
          <NumberField
            key={part}
            id={`repair.${part}`}
            name={say(`repair.${part}`)}
            value={repair[part]}
            way={way}
            limit={{ ...way.limit, min: 0 }}
            onChange={(count) => {
              setRepair({ ...repair, [part]: count })
            }}
          />
        ))}
      </div>
      <h3>{say('repair.list')}</h3>
      <Findings findings={order.purchase.findings} />
      {order.purchase.lines.length === 0 && <p className="quiet">{say('repair.nothing')}</p>}
      <div>
        {order.purchase.lines.map((line, index) => (
          <MoneyRow
            key={index}
            name={[
              say('buy.lots', { count: lotsText(line, words), name: itemName(line.item, plan, words) }),
              lotText(line, words),
            ]
              .filter(Boolean)
              .join(', ')}
          >
            {line.cost === null ? say('buy.no-price') : <Worked of={line.cost} />}
          </MoneyRow>
        ))}
        {order.purchase.lines.length > order.unpriced && (
          <MoneyRow name={say(order.unpriced === 0 ? 'repair.cost' : 'buy.total-so-far')} isTotal>
            <Worked of={order.cost} />
          </MoneyRow>
        )}
      </div>
      {order.purchase.cutting.size + order.purchase.flat.size > 0 && <Caution>{say('task-caution.saw')}</Caution>}
      <CutPlans purchase={order.purchase} />
    </Sheet>
  )
}
