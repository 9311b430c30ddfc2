import type { Plan } from '../../core/plan/schema.ts'
import type { Difference } from '../../device/database/difference.ts'
import type { Storage } from '../../device/database/open-shelf.ts'
import type { OfficeState } from '../../device/sharing/office/office-state.ts'
import type { Saving } from '../../device/database/saver.ts'

/**
 * One plan on the front page. `plan` is for drawing it: its collections (offers, records) may be empty. It is null where its data could not be read, which
 * `trouble` says: it is kept untouched and can be exported raw. Without trouble it has not been looked into yet.
 */
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
  /** How safe the open plan is, as the header says it. */
  readonly saving: Saving
  readonly canUndo: boolean
  readonly canRedo: boolean
}

export type OfflineTruth = 'starting' | 'ready' | 'update-waiting' | 'unsupported' | 'failed'

/** What "erase everything" took off this phone. */
export interface Erased {
  readonly plans: number
  /** Earlier copies of plans. */
  readonly copies: number
  /** The app's own files, kept for use without a network. */
  readonly files: number
}

/** A short message with, perhaps, one way back; shown for ten seconds and never the only way back. */
export interface Notice {
  readonly key: string
  readonly args?: Readonly<Record<string, string | number>>
  readonly undo?: () => void
}

export interface AppState {
  /** 'loading' until the database has answered; nothing may be written before. 'failed': it opened and then could not be read. */
  readonly phase: 'loading' | 'ready' | 'failed'
  /** Where plans are kept. 'blocked': another tab with another version holds the database; the app waits for it. */
  readonly storage: 'asking' | 'blocked' | Storage
  /** Newest first. */
  readonly rows: readonly PlanRow[]
  readonly open: OpenPlan | null
  readonly offline: OfflineTruth
  readonly notice: Notice | null
  /** The name that others see beside what was changed on this phone; empty until its owner gives one. */
  readonly phoneName: string
  /** When a plan last left this phone as a file, or null. */
  readonly backedUpAtMs: number | null
  /** Decisions of the open plan that two phones answered differently, until someone has chosen. */
  readonly differences: readonly Difference[]
  /** Set once everything was erased: then there is nothing left to show but that. */
  readonly erased: Erased | null
  /** How this phone stands with the office that it joined; null where it joined none. */
  readonly office: OfficeState | null
}
