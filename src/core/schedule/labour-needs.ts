import { cited } from '../basics/derived.ts'
import { need, type Need } from '../quantities/need.ts'
import { TRADES } from './crew.ts'
import type { Schedule } from './schedule.ts'

const NO_WASTE = cited('waste.none', '1', 0, 'common-practice')

/** Labour as a thing to buy, by the day, so that it takes its place among prices and costs. */
export const labourNeeds = ({ labour }: Pick<Schedule, 'labour'>): Need[] =>
  TRADES.filter((trade) => labour[trade].days.value > 0).map((trade) =>
    need(trade, 'labour', 'building', labour[trade].days, NO_WASTE),
  )
