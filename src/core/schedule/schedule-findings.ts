import type { Finding } from '../basics/finding.ts'
import type { Plan } from '../plan/schema.ts'
import { CREW_FIELD, TRADES } from './crew.ts'
import type { Step } from './schedule.ts'
import type { Task } from './tasks.ts'

const buildFinding = (
  level: Finding['level'],
  kind: string,
  args: Finding['args'],
  remedies: Finding['remedies'] = [],
): Finding => ({ level, kind, args, card: 'build', remedies })

/** Days that cross: a step ticked before the start, or before a step that it needs. What was typed stands. */
export function tickFindings(steps: readonly Step[], startDay: string | null): Finding[] {
  const byId = new Map(steps.map((step) => [step.id, step]))
  return steps.flatMap((step): Finding[] => {
    const { done } = step
    if (done === null) return []
    if (startDay !== null && done.day < startDay)
      return [
        buildFinding('problem', 'tick-before-start', { step: `task.${step.kind}`, day: done.day, start: startDay }),
      ]
    const late = step.needs.map((id) => byId.get(id)).find((need) => need?.done && need.done.day > done.day)
    if (late === undefined) return []
    return [
      buildFinding('caution', 'ticks-cross', { step: `task.${step.kind}`, before: `task.${late.kind}`, day: done.day }),
    ]
  })
}

/** Trades with work and nobody to do it, and a start that is no day. */
export function crewFindings({ build }: Plan, tasks: readonly Task[], startNumber: number | null): Finding[] {
  const found = TRADES.filter(
    (trade) => build[CREW_FIELD[trade]] === 0 && tasks.some((task) => (task.hours[trade]?.value ?? 0) > 0),
  ).map((trade) =>
    buildFinding('problem', `no-${trade}`, {}, [
      { kind: `add-${trade}`, args: {}, set: { [`build.${CREW_FIELD[trade]}`]: 1 } },
    ]),
  )
  if (build.startDay !== null && startNumber === null)
    found.push(
      buildFinding('problem', 'no-such-day', { day: build.startDay }, [
        { kind: 'clear-start', args: {}, set: { 'build.startDay': null } },
      ]),
    )
  return found
}
