import { choicesOf } from './choices.ts'
import { searched } from './choosing.ts'
import type { LayoutChoices, LayoutRequest } from './contract.ts'
import { prepared } from './lay-out.ts'

/** How a deep search stands: what it has found so far can be taken at any moment. */
export interface DeepSearch {
  readonly done: number
  readonly of: number
  readonly choices: LayoutChoices
  readonly breaches: number
  readonly bought: number
  readonly cutPieces: number
}

/**
 * Searches every junction scheme in every way of laying the walls, for a worker: step by step, so that it can report and be
 * stopped. The choices of the last step go into the plan as `turned`, and every phone lays the same wall from them.
 */
export function* deepSearch(request: LayoutRequest): Generator<DeepSearch, void> {
  const { shop } = prepared(request)
  for (const { best, done, of } of searched(shop, 'deep')) {
    const { breaches, bought, cuts } = best.score
    yield { done, of, choices: choicesOf(best.whole, true), breaches, bought, cutPieces: cuts }
  }
}
