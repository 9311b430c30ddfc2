import { choicesOf } from './choices.ts'
import { chooseWhole, searched } from './choosing.ts'
import { wholeOrder, type Chosen } from './whole-laying.ts'
import { exchanged, WALL_NAMES, type Exchanged } from './exchanging.ts'
import type { LayoutRequest } from './contract.ts'
import type { LayoutChoices } from './layout-choices.ts'
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

/** Plans whose runs are exchanged: the best few that the schemes gave. */
const EXCHANGED = 3
const ROUNDS = 4

/**
 * Searches every junction scheme in every way of laying the walls, then fills single runs otherwise so that offcuts are used;
 * for a worker: step by step, so that it can report and be stopped. The choices of the last step go into the plan as
 * `turned`, and every phone lays the same wall from them.
 */
export function* deepSearch(request: LayoutRequest): Generator<DeepSearch, void> {
  const { shop } = prepared(request)
  const quick = chooseWhole(prepared(request).shop)
  let best: Exchanged = { ...quick, exchanges: [] }
  let thorough = false
  const found: { chosen: Chosen; thorough: boolean }[] = [{ chosen: quick, thorough }]
  let steps = 0
  let of = 0
  const report = (): DeepSearch => {
    const { breaches, bought, cuts } = best.score
    const choices = choicesOf(best.whole, thorough, best.exchanges)
    return { done: ++steps, of: Math.max(of, steps), choices, breaches, bought, cutPieces: cuts }
  }
  for (const step of searched(shop, 'deep')) {
    of = step.of + EXCHANGED * WALL_NAMES.length
    found.push({ chosen: step.tried, thorough: true })
    if (wholeOrder(step.best.score, best.score, shop.sought) < 0) {
      best = { ...step.best, exchanges: [] }
      thorough = true
    }
    yield report()
  }
  found.sort((a, b) => wholeOrder(a.chosen.score, b.chosen.score, shop.sought))
  for (const { chosen, thorough: isThorough } of found.slice(0, EXCHANGED))
    for (const other of exchanged(shop, chosen, ROUNDS)) {
      if (wholeOrder(other.score, best.score, shop.sought) < 0) {
        best = other
        thorough = isThorough
      }
      yield report()
    }
}
