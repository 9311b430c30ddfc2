import { useMemo } from 'react'
import { purchase } from '../../../core/purchase/purchase.ts'
import { repairNeeds, upkeepDue } from '../../../core/schedule/upkeep.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { LinkButton } from '../../parts/Button.tsx'
import { DecisionLine } from '../../parts/DecisionLine.tsx'
import { Icon } from '../../parts/Icon.tsx'
import { MoneyRow } from '../../parts/MoneyRow.tsx'
import { todayIso } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import { itemName, lotsText } from '../buy/line-text.ts'
import { Caution } from '../build/Caution.tsx'
import { cardHref } from '../route.ts'
import { Worked } from '../working/Worked.tsx'
import { firstUse } from './first-use.ts'
import type { RunSheetProps } from './RunSheet.tsx'
import { dueText } from './upkeep-text.ts'

/** Parts of the kiln in the order in which they want looking at, and what to buy for what was found. */
export function UpkeepList({ worked, log, planId }: RunSheetProps) {
  const words = useWords()
  const { say, named } = words
  const due = upkeepDue(worked.plan, firstUse(worked, log), todayIso())
  return (
    <>
      <Caution>{say('run.caution.cold')}</Caution>
      <div>
        {due.map((one) => (
          <DecisionLine
            key={one.part}
            name={named(`upkeep.${one.part}`)}
            answer={dueText(one, words)}
            picture={(one.late ?? -1) >= 0 || one.bad > 0 ? <Icon name="caution" /> : <Icon name="ok" />}
            href={cardHref(planId, 'run', `upkeep:${one.part}`)}
          />
        ))}
      </div>
      <Repairs worked={worked} />
      <LinkButton href={cardHref(planId, 'plan', 'repair')} shape="big" icon="tray">
        {say('repair.title')}
      </LinkButton>
    </>
  )
}

/** Materials for everything that stands open, in whole lots of the plan's own offers. */
function Repairs({ worked: { plan, tray } }: { readonly worked: WorkedOut }) {
  const words = useWords()
  const { say } = words
  const bought = useMemo(() => purchase(plan, repairNeeds(plan, tray)), [plan, tray])
  if (bought.lines.length === 0) return <p className="quiet">{say('run.no-repairs')}</p>
  return (
    <>
      <h3>{say('run.repairs')}</h3>
      <p className="quiet">{say('run.repairs-why')}</p>
      <div>
        {bought.lines.map((line, index) => (
          <MoneyRow
            key={line.offerId ?? index}
            name={say('buy.lots', { count: lotsText(line, words), name: itemName(line.item, plan, words) })}
          >
            {line.cost === null ? say('buy.no-price') : <Worked of={line.cost} />}
          </MoneyRow>
        ))}
        {bought.free.map((total) => (
          <MoneyRow key={total.item} name={itemName(total.item, plan, words)}>
            <Worked of={total.gross} />
          </MoneyRow>
        ))}
      </div>
    </>
  )
}
