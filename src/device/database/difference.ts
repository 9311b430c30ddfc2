import type { Author } from './sittings.ts'

/** One answer to a decision: undefined where the answer was to take it away. */
export interface Side {
  readonly value: unknown
  readonly author: Author | null
}

/** A decision that two phones answered without knowing of each other. Both answers are shown; `kept` stands in the plan until someone chooses. */
export interface Difference {
  readonly path: string
  readonly mine: Side
  readonly theirs: Side
  readonly kept: 'mine' | 'theirs'
}
