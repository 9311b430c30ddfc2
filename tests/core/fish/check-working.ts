import { derivedIn } from '../../laws/formula.ts'
import { faults } from '../../laws/working-faults.ts'

/**
 * Every worked-out number of a result without words, that its own formula does not give, or whose units do not balance. What a model gives, step
 * by step through the hours, lists what went in and has no formula.
 */
export const wrongWorkings = (root: object): string[] =>
  derivedIn(root)
    .filter((one) => one.formula !== undefined)
    .flatMap(faults)

/** Worked-out numbers with a formula: so that a test knows it looked at some. */
export const workingsIn = (root: object): number => derivedIn(root).filter((one) => one.formula !== undefined).length
