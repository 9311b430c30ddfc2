import type { WallUnit } from '../../../core/plan/schema.ts'
import type { PointMark } from '../../drawings/FrontierChart.tsx'

/** Each kind of wall has its own shape on the chart. */
export const MARKS: Readonly<Record<WallUnit['family'], PointMark>> = {
  'hollow-block': 'square',
  'solid-block': 'solid-square',
  'fired-brick': 'triangle',
  'earth-block': 'circle',
  'clay-brick': 'diamond',
}
