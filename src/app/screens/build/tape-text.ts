import type { PegMove, TapeProblem } from '../../../core/geometry/tape-check.ts'
import type { Words } from '../../words/words.ts'

/** Why a set of tapes cannot be worked with. */
export function tapeProblemText(problem: TapeProblem, { named, say, length }: Words): string {
  const key = `tape-problem.${problem.kind}`
  switch (problem.kind) {
    case 'far-from-plan':
      return named(key, {
        from: problem.from,
        to: problem.to,
        read: length(problem.readM),
        plan: length(problem.planM),
      })
    case 'triangle': {
      const [from, to] = problem.longest
      return named(key, { from, to, over: length(problem.overM) })
    }
    case 'not-enough':
      return named(key, {
        pairs: problem.oneOf.map(([from, to]) => say('build.from-to', { from, to })).join(say('build.or')),
      })
    case 'unknown-peg':
      return named(key, { peg: problem.peg })
    case 'not-a-length':
    case 'twice':
      return named(key, { from: problem.from, to: problem.to })
    case 'no-shape':
      return named(key)
    default:
      return problem satisfies never
  }
}

/** How far and which way a peg moves; null for one that stays. */
export function moveText({ peg, along, across }: PegMove, { named, say, length }: Words): string | null {
  const parts = [
    across === null ? null : named('tape.move.across', { toward: across.toward, by: length(across.byM) }),
    along === null ? null : named('tape.move.along', { toward: along.toward, by: length(along.byM) }),
  ].filter((part) => part !== null)
  return parts.length === 0 ? null : say('build.move-peg', { peg, ways: parts.join(say('build.and')) })
}
