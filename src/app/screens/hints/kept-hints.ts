import type { Place } from '../route.ts'

const KEPT_AS = 'kilnwright.hints'

/** After so many visits a place is known. */
const MOST_USES = 3

type Uses = Partial<Record<Place, number>>

function kept(): Uses {
  try {
    const uses: unknown = JSON.parse(localStorage.getItem(KEPT_AS) ?? '{}')
    return typeof uses === 'object' && uses !== null ? uses : {}
  } catch {
    return {}
  }
}

function keep(place: Place, uses: number): void {
  try {
    localStorage.setItem(KEPT_AS, JSON.stringify({ ...kept(), [place]: uses }))
  } catch {
    // A private window forgets it; the hint comes once more.
  }
}

/** Whether a place still has something to say to whoever is new to it on this phone. */
export const isNew = (place: Place): boolean => (kept()[place] ?? 0) < MOST_USES

export const countUse = (place: Place): void => {
  keep(place, (kept()[place] ?? 0) + 1)
}

/** For ever on this phone. */
export const putAway = (place: Place): void => {
  keep(place, MOST_USES)
}
