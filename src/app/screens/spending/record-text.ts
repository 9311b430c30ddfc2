import type { Contribution } from '../../../core/plan/money-records.ts'
import type { Plan } from '../../../core/plan/schema.ts'
import { say } from '../../words/catalogue.ts'
import { showIsoDay } from '../../words/dates.ts'
import type { Words } from '../../words/words.ts'

/** A member's name; where this phone was given none, or the list has lost the member, it says so. */
export function memberName({ members }: Pick<Plan, 'members'>, id: string): string {
  const name = members[id]?.name
  if (name === undefined) return say('group.gone')
  if (name !== '') return name
  return say('group.nameless', { number: Object.keys(members).sort().indexOf(id) + 1 })
}

/** Members in the order of their names. */
export const byName = <T extends { readonly id: string }>(plan: Plan, of: readonly T[]): T[] =>
  [...of].sort((a, b) => memberName(plan, a.id).localeCompare(memberName(plan, b.id)))

/** What somebody promised and gave, and when. */
export function giftText(gift: Contribution, words: Words): string {
  const { money, inLine } = words
  const amounts =
    gift.kind === 'labour'
      ? { promised: inLine(gift.promisedDays, 'day'), given: inLine(gift.givenDays, 'day') }
      : { promised: money(gift.promisedMinor), given: money(gift.givenMinor) }
  const day = gift.day === null ? say('spent.no-day') : showIsoDay(gift.day)
  return `${say(`gift.${gift.kind}`)}: ${say('group.gave', amounts)} · ${day}`
}

/** The members to choose from; one whom the list has lost stays where a record names him. */
export function memberChoices(plan: Plan, named: string | null | undefined): { key: string; label: string }[] {
  const ids = Object.keys(plan.members).map((id) => ({ id }))
  const known = byName(plan, ids).map(({ id }) => id)
  const all = named === undefined || named === null || known.includes(named) ? known : [...known, named]
  return all.map((key) => ({ key, label: memberName(plan, key) }))
}
