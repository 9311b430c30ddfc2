import { kilnGeometry } from '../../core/geometry/kiln.ts'
import { betterSizes, type NearbySize } from '../../core/layout/better-sizes.ts'
import { coursingOf, layoutRequest, levelsFrom, wallsMark } from '../../core/layout/layout-request.ts'
import { deepSearch } from '../../core/layout/searching-deep.ts'
import type { Plan } from '../../core/plan/schema.ts'

type Laying = NonNullable<Plan['walls']['laying']>

export type WallAsk = 'units' | 'cuts' | 'sizes'

export interface WallsAsk {
  readonly kind: 'walls'
  readonly plan: Plan
  readonly ask: WallAsk
}

/** What a search tells as it goes. */
export type WallNews =
  | {
      readonly kind: 'laying'
      readonly done: number
      readonly of: number
      readonly bought: number
      readonly cutPieces: number
      readonly breaches: number
      readonly laying: Laying
    }
  | { readonly kind: 'sizes'; readonly sizes: readonly NearbySize[] }
  | { readonly kind: 'end' }

/** A longer search over the walls of a plan, step by step; runs wherever it is stepped. */
export function* wallSearch(plan: Plan, ask: WallAsk): Generator<WallNews, void> {
  const coursing = coursingOf(plan)
  const geometry = kilnGeometry(plan, levelsFrom(coursing))
  const { turned: _turned, ...request } = layoutRequest(plan, coursing, geometry)
  if (ask === 'sizes') yield { kind: 'sizes', sizes: betterSizes(request) }
  else
    for (const { done, of, bought, cutPieces, breaches, choices } of deepSearch({ ...request, sought: ask })) {
      const { owns, exchanges, ...rest } = choices
      const laying: Laying = {
        ...rest,
        owns: [...owns],
        exchanges: exchanges.map((one) => ({ ...one, lengthsUm: [...one.lengthsUm] })),
        walls: wallsMark(plan, coursing.choice.plan),
      }
      yield { kind: 'laying', done, of, bought, cutPieces, breaches, laying }
    }
  yield { kind: 'end' }
}
