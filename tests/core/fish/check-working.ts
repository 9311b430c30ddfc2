import { dimensionOf, derivedIn, evaluated, formulaDimension, sameDimension } from '../../laws/formula.ts'

/** Every worked-out number of a result that its own formula does not give, or whose units do not balance. Sums are taken as sums. */
export function wrongWorkings(root: object): string[] {
  return derivedIn(root).flatMap((one) => {
    if (one.formula === undefined || one.addends === true) return []
    const value = evaluated(one)
    const wrong: string[] = []
    if (Math.abs(value - one.value) > 1e-9 * Math.max(1e-9, Math.abs(one.value)))
      wrong.push(`${one.id}: ${one.formula} is ${String(value)}, not ${String(one.value)}`)
    const unit = formulaDimension(one.formula, one.inputs)
    if (unit !== 'zero' && !sameDimension(unit, dimensionOf(one.unit)))
      wrong.push(`${one.id}: ${one.formula} is not in ${one.unit}`)
    return wrong
  })
}

/** Worked-out numbers with a formula: so that a test knows it looked at some. */
export const workingsIn = (root: object): number => derivedIn(root).filter((one) => one.formula !== undefined).length
