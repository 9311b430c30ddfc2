import type { WorkedOut } from '../../../core/work-out.ts'

/** What every screen for the work on the site is given. */
export interface SiteSheetProps {
  readonly planId: string
  readonly worked: WorkedOut
  /** What of it to show first. */
  readonly field: string | null
  readonly onClose: () => void
}
