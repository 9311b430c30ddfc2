/** What may go out with a plan; without a choice it does not. */
export interface Private {
  readonly names: boolean
  readonly receipts: boolean
}

export const EVERYTHING: Private = { names: true, receipts: true }
