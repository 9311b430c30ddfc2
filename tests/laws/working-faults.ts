import { messagesOf } from '../../.ci/words-plugin.ts'
import type { Derived } from '../../src/core/basics/derived.ts'
import type { Plan } from '../../src/core/plan/schema.ts'
import { derivedIn, dimensionOf, evaluated, formulaDimension, sameDimension } from './formula.ts'
import { shownOf } from './shown.ts'

const words = messagesOf('en')

/** What is wrong with the working of a number: each entry names it. */
export function faults(one: Derived): string[] {
  const found: string[] = []
  if (words[`working.${one.id}`] === undefined) found.push(`${one.id}: no words`)
  if (!Number.isFinite(one.value)) found.push(`${one.id}: ${String(one.value)}`)
  const { formula } = one
  if (formula === undefined) {
    if (Object.keys(one.inputs).length > 0) found.push(`${one.id}: inputs without a formula`)
    return found
  }
  const value =
    one.addends === true ? Object.values(one.inputs).reduce((sum, each) => sum + each.value, 0) : evaluated(one)
  const error = Math.abs(value - one.value)
  if (!(error <= 1e-9 * Math.max(Math.abs(value), Math.abs(one.value)) + 1e-12))
    found.push(`${one.id}: ${formula} = ${String(value)}, not ${String(one.value)}`)
  try {
    const unit = one.addends === true ? sumDimension(one) : formulaDimension(formula, one.inputs)
    if (unit !== 'zero' && !sameDimension(unit, dimensionOf(one.unit)))
      found.push(`${one.id}: ${formula} is not in ${one.unit}`)
  } catch (error) {
    found.push(`${one.id}: ${String(error)}`)
  }
  return found
}

function sumDimension({ inputs, id }: Derived) {
  const sizes = Object.values(inputs).map((each) => dimensionOf(each.unit))
  const [first] = sizes
  if (first === undefined) return 'zero' as const
  if (!sizes.every((each) => sameDimension(each, first))) throw new Error(`${id}: a sum of unlike units`)
  return first
}

/** What is wrong with the working of the numbers that a plan gives, each fault once. */
export const workingFaults = (plan: Plan): string[] => [...new Set(derivedIn(shownOf(plan)).flatMap(faults))]
