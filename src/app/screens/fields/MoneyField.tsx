import type { ReactNode } from 'react'
import { MOST_MONEY_MINOR } from '../../../core/plan/limits.ts'
import { TextField } from '../../parts/TextField.tsx'
import { amount, currencySign, readMoney } from '../../words/money.ts'
import { useWords } from '../../words/use-words.tsx'

/** An amount of money that one types, or leaves open: an empty field is no amount, not zero. */
export function MoneyField({
  id,
  name,
  minor,
  onChange,
  help,
  isTakenAtOnce = false,
}: {
  readonly id?: string
  readonly name: string
  readonly minor: number | null
  readonly onChange: (minor: number | null) => void
  readonly help?: ReactNode
  readonly isTakenAtOnce?: boolean
}) {
  const { say, show, money } = useWords()
  const { currency } = show
  const refuse = (typed: string): string | null => {
    if (typed === '') return null
    const read = readMoney(typed, currency)
    if (read === null) return say('field.not-money', { example: money(12_500 * 10 ** currency.digits) })
    return read >= 0 && read <= MOST_MONEY_MINOR
      ? null
      : say('field.outside', { min: money(0), max: money(MOST_MONEY_MINOR) })
  }
  return (
    <TextField
      {...(id !== undefined && { id })}
      name={name}
      value={minor === null ? '' : amount(minor, currency)}
      most={24}
      unit={currencySign(currency)}
      keyboard="decimal"
      refuse={refuse}
      help={help}
      isTakenAtOnce={isTakenAtOnce}
      onChange={(typed) => {
        onChange(typed === '' ? null : readMoney(typed, currency))
      }}
    />
  )
}
