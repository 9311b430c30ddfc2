import type { Plan } from '../../../core/plan/schema.ts'
import type { PlanHistory } from '../../state/history-actions.ts'
import { showWhen } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import { answerText } from '../differences/answer-text.ts'
import { decisionName } from '../differences/decision-name.ts'
import { whoText } from '../differences/who.ts'
import { valueAt } from '../fields/value-at.ts'

/** Lines of one stretch of time; a day of course work can have hundreds. */
const MOST_LINES = 60

/** What changed between two kept moments: whose phone, which decision, what it says now and what it said before. */
export function StepOfHistory({
  step,
  plan,
  nowMs,
}: {
  readonly step: PlanHistory['steps'][number]
  readonly plan: Plan | null
  readonly nowMs: number
}) {
  const words = useWords()
  const { say } = words
  const shown = step.changes.slice(0, MOST_LINES)
  return (
    <section>
      <h2>{say('history.from-to', { from: showWhen(step.fromMs, nowMs), to: showWhen(step.toMs, nowMs) })}</h2>
      <ul>
        {shown.map(({ path, before, after, author }) => {
          const entryOf = (entry: string) => valueAt(plan, entry) ?? after ?? before
          const answer = answerText(path, after, words)
          return (
            <li key={path} className="change">
              <span>{whoText(author, words)}</span>
              <b>
                {decisionName(path, entryOf, words)} → {answer}
              </b>
              {before !== undefined && (
                <span className="quiet">{say('history.before', { value: answerText(path, before, words) })}</span>
              )}
            </li>
          )
        })}
      </ul>
      {step.changes.length > shown.length && (
        <p className="quiet">{say('history.more', { count: step.changes.length - shown.length })}</p>
      )}
    </section>
  )
}
