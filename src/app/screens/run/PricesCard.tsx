import { useWords } from '../../words/use-words.tsx'
import { MoneyField } from '../fields/MoneyField.tsx'
import { PlanField } from '../fields/PlanField.tsx'
import { usePlan } from '../fields/plan-in-hand.ts'

const PRICES = ['freshPriceMinor', 'smokedPriceMinor', 'woodPriceMinor', 'otherCostMinor'] as const

/** Prices of a kilogram, all else that a firing costs, and how long kiln and trays last. */
export function PricesCard() {
  const { say, named } = useWords()
  const { plan, set } = usePlan()
  return (
    <>
      <div className="fields">
        {PRICES.map((price) => (
          <MoneyField
            key={price}
            id={`run.${price}`}
            name={named(`field.run.${price}`)}
            minor={plan.run[price]}
            onChange={(minor) => set({ [`run.${price}`]: minor })}
            help={price === 'otherCostMinor' ? say('run.other-why') : undefined}
          />
        ))}
      </div>
      <h3>{say('run.lives')}</h3>
      <p className="quiet">{say('run.lives-why')}</p>
      <div className="fields">
        <PlanField at="run.firingDaysPerYear" />
        <PlanField at="run.kilnLifeYears" />
        <PlanField at="run.trayLifeYears" />
      </div>
    </>
  )
}
