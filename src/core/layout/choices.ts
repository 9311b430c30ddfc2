import type { WholeLaid } from './whole-laying.ts'
import type { LayoutChoices, RunExchange } from './layout-choices.ts'
import { toMetres } from './micrometres.ts'

const startOf = (start: number | undefined): 0 | 1 => (start === 1 ? 1 : 0)

/** The choices a laid plan follows from: laying it again with them gives the same walls. */
export const choicesOf = (whole: WholeLaid, thorough: boolean, exchanges: readonly RunExchange[]): LayoutChoices => ({
  exchanges,
  thorough,
  owns: whole.owns,
  cutPlaces: {
    front: whole.front.place,
    back: whole.back.place,
    left: whole.left.place,
    right: whole.right.place,
    divider: whole.divider?.place ?? 'any',
  },
  starts: {
    back: startOf(whole.back.start),
    left: startOf(whole.left.start),
    right: startOf(whole.right.start),
    divider: startOf(whole.divider?.start),
  },
  bearingM: { outer: toMetres(whole.bearing.outer), inner: toMetres(whole.bearing.inner) },
})
