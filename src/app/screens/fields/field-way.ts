import { LIMITS, type Limit, type LimitedField } from '../../../core/plan/limits.ts'
import { readFigure, readShare, showShare } from '../../words/figure.ts'
import { INCH_M, readLength, showLength } from '../../words/length.ts'
import { showNumber } from '../../words/locale.ts'
import type { Figure } from '../../words/show.ts'
import type { Words } from '../../words/words.ts'

/** How one field of the plan is shown, read and stepped for this reader. */
export interface FieldWay {
  readonly limit: Limit
  readonly step: number
  readonly show: (value: number) => Figure
  readonly read: (typed: string) => number | null
  readonly keyboard: 'decimal' | 'numeric' | 'text'
}

const isLimited = (path: string): path is LimitedField => path in LIMITS

/** Parts of a mix, waste and winds share their limits under one name. */
const SHARED: readonly (readonly [RegExp, LimitedField])[] = [
  [/^mixes\.\w+\.dryFactor$/, 'mixes.dryFactor'],
  [/^mixes\.\w+\.\w+$/, 'mixes.part'],
  [/^place\.\w+Deg$/, 'place.windDeg'],
  [/^place\.\w+M$/, 'place.distanceM'],
]

export function limitOf(path: string): Limit {
  if (isLimited(path)) return LIMITS[path]
  const shared = SHARED.find(([pattern]) => pattern.test(path))
  if (shared === undefined) throw new Error(`no limits for ${path}`)
  return LIMITS[shared[1]]
}

/** Numbers without a unit and at most one are shares, shown in per cent. */
export const isShare = ({ unit, max }: Limit): boolean => unit === '1' && max <= 1

export function fieldWay(path: string, words: Words): FieldWay {
  const limit = limitOf(path)
  if (isShare(limit)) {
    return { limit, step: limit.step, show: showShare, read: readShare, keyboard: 'decimal' }
  }
  const { show } = words
  const way = {
    limit,
    step: limit.step,
    show: (value: number) => words.figure(value, limit.unit),
    read: (typed: string) => readFigure(typed, limit.unit, show),
  }
  if (limit.unit === 'm') {
    const isInches = show.length === 'ft-in'
    if (!isInches && limit.step >= FAR_STEP_M) {
      const read = (typed: string) => readLength(typed, { length: 'm' })
      return { ...way, show: showFar, read, keyboard: 'decimal' }
    }
    return {
      ...way,
      step: isInches ? inchStep(limit.step) : limit.step,
      show: (value) => showLength(value, show, true),
      keyboard: isInches ? 'text' : 'decimal',
    }
  }
  return { ...way, keyboard: Number.isInteger(limit.step) && limit.unit === '1' ? 'numeric' : 'decimal' }
}

/** What is paced out by the metre is said in metres, whatever the reader's unit for blocks. */
const FAR_STEP_M = 1
const showFar = (lengthM: number): Figure => ({ figure: showNumber(lengthM, 2), unit: 'm' })

/** The mark of an inch tape nearest to a metric step: an eighth for millimetres, half an inch for centimetres. */
const inchStep = (stepM: number): number => (stepM < 0.005 ? INCH_M / 8 : stepM < 0.05 ? INCH_M / 2 : INCH_M * 4)
