import type { FiringLog } from '../../../core/schedule/firing-log.ts'
import { missingPrices } from '../../../core/schedule/firing-account.ts'
import { paidBack, payback } from '../../../core/schedule/payback.ts'
import { upkeepDue } from '../../../core/schedule/upkeep.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import type { IconName } from '../../parts/Icon.tsx'
import { todayIso } from '../../words/dates.ts'
import type { Words } from '../../words/words.ts'
import { firstUse } from './first-use.ts'

export interface RunAnswer {
  readonly card: 'money' | 'upkeep' | 'heat' | 'firing' | 'run'
  readonly icon: IconName
  readonly answer: string
}

/** What opens from Run, each with its present answer in one line. */
export function runAnswers(worked: WorkedOut, log: FiringLog, words: Words): readonly RunAnswer[] {
  const { plan } = worked
  const { say, number } = words
  const open = missingPrices(plan).length
  return [
    { card: 'money', icon: 'coins', answer: moneyAnswer(worked, log, words) },
    { card: 'upkeep', icon: 'build', answer: upkeepAnswer(worked, log, words) },
    { card: 'heat', icon: 'run', answer: say('run.answer.heat', { moisture: words.share(plan.firing.woodMoisture) }) },
    {
      card: 'firing',
      icon: 'days',
      answer: say('run.answer.firing', {
        cook: number(plan.firing.cookHours),
        cookHeat: words.inLine(plan.firing.cookDegC, 'degC'),
        dry: number(plan.firing.dryHours),
        dryHeat: words.inLine(plan.firing.dryDegC, 'degC'),
      }),
    },
    {
      card: 'run',
      icon: 'pencil',
      answer:
        open > 0
          ? say('run.answer.prices-open', { count: open })
          : say('run.answer.lives', { kiln: number(plan.run.kilnLifeYears), trays: number(plan.run.trayLifeYears) }),
    },
  ]
}

function moneyAnswer(worked: WorkedOut, log: FiringLog, { say, number, money }: Words): string {
  const back = paidBack(log, worked.costs)
  if (back !== null) {
    if (back.left.value === 0) return say('run.answer.paid-back')
    if (back.more === null) return say('run.answer.never')
    return say('run.answer.more', { count: back.more.value, left: money(back.left.value) })
  }
  const low = payback(worked.plan, worked.fish, worked.costs, 'low')
  const high = payback(worked.plan, worked.fish, worked.costs, 'high')
  if (low === null || high === null) return say('run.answer.no-prices')
  if (low.firings === null || high.firings === null) return say('run.answer.never')
  return say('run.answer.after', { from: number(low.firings.value), to: number(high.firings.value) })
}

function upkeepAnswer(worked: WorkedOut, log: FiringLog, { say }: Words): string {
  const due = upkeepDue(worked.plan, firstUse(worked, log), todayIso())
  const late = due.filter((one) => (one.late ?? -1) >= 0).length
  const bad = due.reduce((sum, one) => sum + one.bad, 0)
  if (late === 0 && bad === 0) return say('run.answer.upkeep-none')
  return say('run.answer.upkeep', { late, bad })
}
