import type { Plan } from '../../core/plan/schema.ts'

/** How this reader wants figures: what a plan keeps in `show` and `currency`. */
export interface Show {
  readonly length: Plan['show']['length']
  readonly mass: Plan['show']['mass']
  readonly currency: { readonly code: string; readonly digits: number }
}

export const DEFAULT_SHOW: Show = { length: 'mm', mass: 'kg', currency: { code: 'XOF', digits: 0 } }

/** A figure and its unit apart, because they are set in two sizes. The unit is empty where none is said. */
export interface Figure {
  readonly figure: string
  readonly unit: string
  /** Where the locale writes the sign of money before the figure. */
  readonly isUnitFirst?: boolean
}

/** Figure and unit on one line that does not break between them. */
export const inLine = ({ figure, unit, isUnitFirst = false }: Figure): string =>
  unit === '' ? figure : isUnitFirst ? `${unit}\u00a0${figure}` : `${figure}\u00a0${unit}`
