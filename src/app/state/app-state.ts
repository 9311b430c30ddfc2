import type { Plan } from '../../core/plan/schema.ts'

/** How safe the open plan is, as the header says it. Times are milliseconds since 1970 by this phone's clock. */
export type Saving =
  | { readonly kind: 'saved'; readonly atMs: number }
  | { readonly kind: 'saving' }
  | { readonly kind: 'not-saved'; readonly reason: 'full' | 'blocked' | 'failed' }
  /** No database on this phone (private window): work lives in this tab only; export still works. */
  | { readonly kind: 'memory-only' }

/** One plan on the front page. `plan` is null where its data could not be read: it is kept untouched and can be exported raw. */
export interface PlanRow {
  readonly id: string
  readonly name: string
  readonly plan: Plan | null
  readonly savedAtMs: number
  readonly trouble: null | { readonly kind: 'damaged' | 'newer'; readonly theirVersion?: number }
}

export interface OpenPlan {
  readonly id: string
  readonly plan: Plan
  readonly saving: Saving
  readonly canUndo: boolean
  readonly canRedo: boolean
}

export type OfflineTruth = 'starting' | 'ready' | 'update-waiting' | 'unsupported' | 'failed'

/** A short message with, perhaps, one way back; shown for ten seconds and never the only way back. */
export interface Notice {
  readonly key: string
  readonly args?: Readonly<Record<string, string | number>>
  readonly undo?: () => void
}

export interface AppState {
  /** 'loading' until the database has answered; nothing may be written before. */
  readonly phase: 'loading' | 'ready'
  readonly rows: readonly PlanRow[]
  readonly open: OpenPlan | null
  readonly offline: OfflineTruth
  readonly notice: Notice | null
}
