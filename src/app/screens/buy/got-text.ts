import type { ItemSpending } from '../../../core/costs/spending.ts'
import type { Words } from '../../words/words.ts'

/** What of a thing is there and what is still to get; pieces are whole to whoever carries them. */
export function gotText({ got, missing }: ItemSpending, words: Words): string {
  const { say, inLine } = words
  if (missing.value <= 0) return say('spent.all-there')
  const whole = missing.unit === 'piece' ? Math.ceil(missing.value - 1e-9) : missing.value
  const left = say('spent.still', { left: inLine(whole, missing.unit) })
  return got.value > 0 ? say('spent.got', { got: inLine(got.value, got.unit), left }) : left
}
