import { LIMITS, type LimitedField } from '../../../core/plan/limits.ts'
import { showNumber } from '../../words/locale.ts'
import { readNumber } from '../../words/read-number.ts'
import type { FieldWay } from './field-way.ts'

const LITRE_M3 = 0.001

/** What a pan or a bucket holds is known in litres, from a bottle. */
export const litreWay = (field: LimitedField): FieldWay => ({
  limit: LIMITS[field],
  step: LITRE_M3,
  show: (volumeM3) => ({ figure: showNumber(volumeM3 / LITRE_M3, 1), unit: 'l' }),
  read: (typed) => {
    const litres = readNumber(typed.replace(/\s*l$/i, ''))
    return litres === null ? null : litres * LITRE_M3
  },
  keyboard: 'decimal',
})
