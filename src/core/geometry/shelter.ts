import { modulesToCover } from '../basics/count.ts'
import { cited, derive, typed, type Derived } from '../basics/derived.ts'
import type { Finding } from '../basics/finding.ts'
import type { TrayFrame } from '../fish/tray-frame.ts'
import type { Plan } from '../plan/schema.ts'
import type { KilnGeometry } from './kiln.ts'

/** Timber of one kind: how many and how long. */
export interface ShelterTimber {
  readonly kind: 'post' | 'beam' | 'rafter' | 'purlin'
  readonly count: Derived<'piece'>
  readonly length: Derived<'m'>
}

/** An open-sided roof on posts, falling to the back, its sheets on purlins: what it takes. Sizes are common practice, to be settled with a carpenter. */
export interface Shelter {
  readonly roofLength: Derived<'m'>
  readonly roofDepth: Derived<'m'>
  readonly headroom: Derived<'m'>
  readonly highSide: Derived<'m'>
  readonly timbers: readonly ShelterTimber[]
  readonly sheets: Derived<'piece'>
  readonly sheetNails: Derived<'piece'>
  readonly strapFixings: Derived<'piece'>
}

/** All common practice, no source. */
const practice = {
  pitch: cited('shelter-pitch', '1', 0.2, 'common-practice'),
  bay: cited('shelter-bay', 'm', 2.4, 'common-practice'),
  rafterSpacing: cited('rafter-spacing', 'm', 1.2, 'common-practice'),
  purlinSpacing: cited('purlin-spacing', 'm', 0.9, 'common-practice'),
  postInGround: cited('post-in-ground', 'm', 0.6, 'common-practice'),
  sheetCover: cited('sheet-cover-width', 'm', 0.75, 'common-practice'),
  sheetLength: cited('sheet-length', 'm', 2.4, 'common-practice'),
  endLap: cited('sheet-end-lap', 'm', 0.15, 'common-practice'),
  nailsPerCrossing: cited('sheet-nails-a-crossing', 'piece', 4, 'common-practice'),
}

/** Room kept between the top of a full stack and the sheets, m: common practice. */
const OVER_STACK_M = 1

/** Posts and roof over the kiln, m and m²; nothing where no shelter is wanted. */
export function shelterOf({ place }: Plan, { outsideLength: L, outsideDepth: D }: KilnGeometry): Shelter | null {
  if (place.shelter === 'none') return null
  const o = typed('shelter-overhang', 'm', place.shelterOverhangM, 'place.shelterOverhangM')
  const h = typed('shelter-headroom', 'm', place.shelterHeadroomM, 'place.shelterHeadroomM')
  const {
    pitch: s,
    bay,
    rafterSpacing,
    purlinSpacing,
    postInGround: e,
    sheetCover: w,
    sheetLength: l,
    endLap: k,
    nailsPerCrossing,
  } = practice
  const R = derive('roof-length', 'm', 'L + 2·o', { L, o }, (v) => v.L + 2 * v.o)
  const B = derive('roof-depth', 'm', 'D + 2·o', { D, o }, (v) => v.D + 2 * v.o)
  const H = derive('roof-high-side', 'm', 'h + s·B', { h, s, B }, (v) => v.h + v.s * v.B)
  const slope = derive('roof-slope-length', 'm', 'B·sqrt(1 + s^2)', { B, s }, (v) => v.B * Math.sqrt(1 + v.s ** 2))
  const postsARow = derive(
    'posts-in-a-row',
    'piece',
    'ceil(R / b) + 1',
    { R, b: bay },
    (v) => modulesToCover(v.R, v.b) + 1,
  )
  const rafters = derive(
    'rafters',
    'piece',
    'ceil(R / c) + 1',
    { R, c: rafterSpacing },
    (v) => modulesToCover(v.R, v.c) + 1,
  )
  const purlins = derive(
    'purlins',
    'piece',
    'ceil(S / d) + 1',
    { S: slope, d: purlinSpacing },
    (v) => modulesToCover(v.S, v.d) + 1,
  )
  const down = derive('sheets-down-the-slope', 'piece', 'max(1, ceil((S − k) / (l − k)))', { S: slope, l, k }, (v) =>
    Math.max(1, modulesToCover(v.S - v.k, v.l - v.k)),
  )
  const across = derive('sheets-across', 'piece', 'ceil(R / w)', { R, w }, (v) => modulesToCover(v.R, v.w))
  return {
    roofLength: R,
    roofDepth: B,
    headroom: h,
    highSide: H,
    timbers: [
      { kind: 'post', count: postsARow, length: derive('post-length-front', 'm', 'H + e', { H, e }, (v) => v.H + v.e) },
      { kind: 'post', count: postsARow, length: derive('post-length-back', 'm', 'h + e', { h, e }, (v) => v.h + v.e) },
      { kind: 'beam', count: cited('beams', 'piece', 2, 'common-practice'), length: R },
      { kind: 'rafter', count: rafters, length: slope },
      { kind: 'purlin', count: purlins, length: R },
    ],
    sheets: derive('roof-sheets', 'piece', 'n·m', { n: down, m: across }, (v) => v.n * v.m),
    sheetNails: derive(
      'sheet-nails',
      'piece',
      'm·p·q',
      { m: across, p: purlins, q: nailsPerCrossing },
      (v) => v.m * v.p * v.q,
    ),
    strapFixings: derive(
      'roof-ties',
      'piece',
      '2·n + 2·r + r·p',
      { n: postsARow, r: rafters, p: purlins },
      (v) => 2 * v.n + 2 * v.r + v.r * v.p,
    ),
  }
}

/** Is there room over a full stack? The low side counts. */
export function shelterFindings(shelter: Shelter | null, tray: TrayFrame): Finding[] {
  if (shelter === null) return []
  const neededM = tray.topHeight.value + OVER_STACK_M
  if (shelter.headroom.value >= neededM) return []
  const toM = modulesToCover(neededM, 0.1) / 10
  return [
    {
      level: 'caution',
      kind: 'place.shelter-low',
      args: { headroom: { value: shelter.headroom.value, unit: 'm' }, needed: { value: neededM, unit: 'm' } },
      card: 'place',
      remedies: [
        {
          kind: 'place.raise-shelter',
          args: { headroom: { value: toM, unit: 'm' } },
          set: { 'place.shelterHeadroomM': toM },
        },
      ],
    },
  ]
}
