import { compileMessage } from '@lingui/message-utils/compileMessage'
import { messagesOf } from '../../.ci/words-plugin.ts'
import type { Derived } from '../../src/core/basics/derived.ts'
import type { Finding, FindingArg } from '../../src/core/basics/finding.ts'
import type { Plan } from '../../src/core/plan/schema.ts'
import { isItemKey, itemOf } from '../../src/core/quantities/items.ts'
import { SECTIONS, type Need } from '../../src/core/quantities/need.ts'
import { SOURCES } from '../../src/core/sources/sources.ts'
import { UNITS } from '../../src/core/basics/unit.ts'
import { derivedIn } from './formula.ts'
import { onSite, shownOf } from './shown.ts'

const words = messagesOf('en')
const LEVELS = ['problem', 'caution', 'good']
const CARDS = ['catch', 'chambers', 'walls', 'openings', 'ground', 'trays', 'place', 'money', 'build']
const SHOWN_UNITS = ['m', 'kg', 'money', 'day', 'deg']

type Args = Readonly<Record<string, FindingArg>>

/** What a message asks to be told, by the library that reads it: each hole is [name] or [name, kind, choices]. */
function askedBy(parts: unknown, args: Args): string[] {
  if (!Array.isArray(parts)) return []
  return parts.flatMap((part: unknown) => {
    if (!Array.isArray(part)) return []
    const [name, kind, choices] = part as unknown as readonly [string, string?, Record<string, unknown>?]
    const chosen = args[name]
    const open =
      kind === 'select' && typeof chosen === 'string'
        ? [choices?.[chosen] ?? choices?.['other']]
        : Object.values(choices ?? {})
    return [name, ...open.flatMap((inner) => askedBy(inner, args))]
  })
}

/** Whether a text is the key of a message that does not exist: `item.cement` looks like one, a name or a number does not. */
const isLostKey = (text: string): boolean => /^[a-z-]+\.[a-z0-9-]+$/.test(text) && words[text] === undefined

function messageFaults(key: string, args: Args): string[] {
  const message = words[key]
  if (message === undefined) return [`${key}: no words`]
  const told = Object.entries(args)
  return [
    ...askedBy(compileMessage(message), args).flatMap((name) =>
      name in args ? [] : [`${key}: {${name}} is not told`],
    ),
    ...told.flatMap(([name, arg]) => {
      if (typeof arg === 'string') return arg === '' || isLostKey(arg) ? [`${key}: ${name} is “${arg}”`] : []
      const value = typeof arg === 'number' ? arg : arg.value
      const isShown = typeof arg === 'number' || SHOWN_UNITS.includes(arg.unit)
      return Number.isFinite(value) && isShown ? [] : [`${key}: ${name} cannot be shown`]
    }),
  ]
}

function findingFaults({ level, kind, args, card, remedies }: Finding, plan: Plan): string[] {
  return [
    ...(LEVELS.includes(level) && CARDS.includes(card) ? [] : [`finding.${kind}: ${level} on ${card}`]),
    ...messageFaults(`finding.${kind}`, args),
    ...remedies.flatMap((remedy) => [
      ...messageFaults(`remedy.${remedy.kind}`, remedy.args),
      ...Object.keys(remedy.set).flatMap((field) => (at(plan, field) === undefined ? [`${kind}: sets ${field}`] : [])),
      ...(Object.keys(remedy.set).length > 0 ? [] : [`remedy.${remedy.kind}: changes nothing`]),
    ]),
  ]
}

/** What stands in the plan under a path with dots. */
const at = (plan: Plan, field: string): unknown =>
  field.split('.').reduce<unknown>((of, key) => (of as Readonly<Record<string, unknown>> | undefined)?.[key], plan)

function workingFaults(one: Derived, plan: Plan): string[] {
  const found = messageFaults(`working.${one.id}`, one.args ?? {})
  if (!Object.hasOwn(UNITS, one.unit)) found.push(`${one.id}: in “${one.unit}”`)
  if (one.source !== undefined && !Object.hasOwn(SOURCES, one.source)) found.push(`${one.id}: from “${one.source}”`)
  if (one.field !== undefined && at(plan, one.field) !== one.value)
    found.push(`${one.id}: ${one.field} holds ${String(at(plan, one.field))}, not ${String(one.value)}`)
  return found
}

/** What a line of the list is for, and whether it is counted as such things are. */
const needFaults = ({ item, section, use, net }: Need): string[] => [
  ...(isItemKey(item) && itemOf(item).unit === net.unit ? [] : [`${item} in ${net.unit}`]),
  ...(SECTIONS.includes(section) ? [] : [`${item}: part “${section}”`]),
  ...(words[`use.${use}`] === undefined ? [`${item}: for “${use}”`] : []),
  ...(net.value > 0 ? [] : [`${item} for ${use}: ${String(net.value)} is no need`]),
]

/** What is told wrongly of a plan as it is worked on: sentences, their numbers, fields, sources and the lines of the list. */
export function toldFaults(any: Plan): string[] {
  const plan = onSite(any)
  const shown = shownOf(plan)
  const { worked, spent, group } = shown
  const findings = [...worked.findings, ...spent.findings, ...group.findings]
  return [
    ...new Set([
      ...findings.flatMap((one) => findingFaults(one, plan)),
      ...derivedIn(shown).flatMap((one) => workingFaults(one, plan)),
      ...worked.needs.flatMap(needFaults),
    ]),
  ]
}
