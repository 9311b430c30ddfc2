import { useState } from 'react'
import { withCurrency } from '../../../../core/plan/currency-change.ts'
import { PickList } from '../../../parts/PickList.tsx'
import { Segments } from '../../../parts/Picks.tsx'
import { TextField } from '../../../parts/TextField.tsx'
import { CURRENCY_CODES, currencyName, currencyOf } from '../../../words/currencies.ts'
import { useWords } from '../../../words/use-words.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'

const OTHER = 'other'
const CODE = /^[A-Z]{3}$/
const DIGITS = ['0', '2', '3'] as const

/** The plan's money: one of the list, or any other by its three letters and by how many digits its smallest coin has. */
export function CurrencyPick() {
  const { say } = useWords()
  const { plan, edit } = usePlan()
  const { code, digits } = plan.currency
  const isListed = CURRENCY_CODES.includes(code)
  const [isTyping, setIsTyping] = useState(!isListed)
  return (
    <>
      <PickList
        name={say('money.currency')}
        value={isTyping ? OTHER : code}
        options={[
          ...CURRENCY_CODES.map((key) => ({ key, label: currencyName(key) })),
          { key: OTHER, label: say('money.other-currency') },
        ]}
        onChange={(chosen) => {
          setIsTyping(chosen === OTHER)
          if (chosen !== OTHER) edit((now) => withCurrency(now, currencyOf(chosen)))
        }}
      />
      {isTyping && (
        <>
          <TextField
            name={say('money.currency-code')}
            value={code}
            most={3}
            help={say('money.currency-code-help')}
            refuse={(typed) => (CODE.test(typed.toUpperCase()) ? null : say('money.currency-code-help'))}
            onChange={(typed) =>
              edit((now) => withCurrency(now, { code: typed.toUpperCase(), digits: now.currency.digits }))
            }
          />
          <Segments
            name={say('money.digits')}
            isNameShown
            choices={DIGITS.map((key) => ({ key, label: key }))}
            chosen={DIGITS.find((key) => key === String(digits)) ?? '2'}
            onChoose={(key) => edit((now) => withCurrency(now, { ...now.currency, digits: Number(key) }))}
          />
        </>
      )}
    </>
  )
}
