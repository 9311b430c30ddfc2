import type { SourceId } from '../sources/sources.ts'

/** Allowable bearing as two tables give it, Pa. Plans start from the lower; a person who knows the ground may take another class. */
export interface PublishedBearing {
  readonly bearingPa: number
  readonly source: SourceId
}

/** One pound-force per square foot, Pa: 4.4482216152605 N over 0.3048² m². */
const PSF = 4.4482216152605 / 0.3048 ** 2
const ibc = (psf: number): PublishedBearing => ({ bearingPa: psf * PSF, source: 'ibc-2012' })
const canada = (kPa: number): PublishedBearing => ({ bearingPa: kPa * 1000, source: 'canada-housing' })

/** Published values for each class of the catalogue; none for ground not to build on without advice. */
export const PUBLISHED_BEARING: Readonly<Record<string, readonly PublishedBearing[]>> = {
  'clay-soft': [canada(40)],
  'clay-firm': [ibc(1500), canada(75)],
  'clay-stiff': [ibc(1500), canada(150)],
  'sand-loose': [canada(50)],
  'sand-dense': [ibc(2000), canada(150)],
  'gravel-sandy': [ibc(3000), canada(150)],
  laterite: [ibc(2000)],
  'rock-soft': [ibc(4000)],
  'not-to-build': [],
}

/** Lowest and highest published bearing of a soil class, Pa; null where no table gives one. */
export function bearingRange(soil: string): { readonly low: PublishedBearing; readonly high: PublishedBearing } | null {
  const sorted = (PUBLISHED_BEARING[soil] ?? []).toSorted((one, other) => one.bearingPa - other.bearingPa)
  const low = sorted[0]
  const high = sorted.at(-1)
  return low === undefined || high === undefined ? null : { low, high }
}
