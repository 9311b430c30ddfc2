import { soilByHand } from '../../../core/geometry/soil-test.ts'

export const PICKETS = ['short', 'hand'] as const
export const THUMBS = ['sand', 'soft', 'firm', 'stiff'] as const

/** What a picket and a thumb say of natural ground; `other` where the user knows better than both. */
export interface GroundAnswer {
  readonly picket: (typeof PICKETS)[number]
  readonly thumb: (typeof THUMBS)[number]
  readonly other: string | null
}

/** Until somebody has pushed a picket: firm clay, of the lower kinds that carry. */
export const FIRST_GROUND: GroundAnswer = { picket: 'short', thumb: 'firm', other: null }

const DEPTH_M = { short: 0.1, hand: 0.3 } as const
const THUMB = { sand: null, soft: 'sinks-easily', firm: 'moderate', stiff: 'hardly' } as const

/** The soil of the catalogue that the answers mean. */
export function soilFrom({ picket, thumb, other }: GroundAnswer): string {
  if (other !== null) return other
  const verdict = soilByHand({
    ground: 'natural',
    handful: thumb === 'sand' ? 'falls-apart' : 'sticky-ribbon',
    thumb: THUMB[thumb],
    picketM: DEPTH_M[picket],
  })
  return verdict.ok ? verdict.value.soil : 'not-to-build'
}
