import { LIMITS } from '../../../core/plan/limits.ts'
import type { Firing } from '../../../core/plan/schema.ts'
import { openMoneyByPrices } from '../../../core/schedule/firing-account.ts'
import { logFindings } from '../../../core/schedule/firing-log-findings.ts'
import { Button } from '../../parts/Button.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { TextField } from '../../parts/TextField.tsx'
import { setField } from '../../state/actions.ts'
import { notify } from '../../state/notices.ts'
import { showIsoDay, todayIso } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import { DayField } from '../fields/DayField.tsx'
import { fieldWay } from '../fields/field-way.ts'
import { MoneyField } from '../fields/MoneyField.tsx'
import { OpenNumberField } from '../fields/OpenNumberField.tsx'
import { NumberField } from '../fields/PlanField.tsx'
import { usePlan } from '../fields/plan-in-hand.ts'
import { Findings } from '../plan/Findings.tsx'
import { KeyFigure } from '../working/Worked.tsx'
import type { RunSheetProps } from './RunSheet.tsx'

const MONEY = ['salesMinor', 'fishCostMinor', 'woodCostMinor', 'otherCostMinor'] as const
/** A firing without fish is none. */
const LEAST_FISH_KG = 0.1

/** One firing as it was: every box is kept as it is typed, an empty one means not weighed or not paid yet. */
export function OneFiring({ id, log, onClose }: RunSheetProps & { readonly id: string }) {
  const words = useWords()
  const { say, named, mass, number } = words
  const { plan, set } = usePlan()
  const index = log.firings.findIndex((one) => one.id === id)
  const logged = log.firings[index]
  const firing = plan.run.firings[id]
  const at = `run.firings.${id}`
  if (firing === undefined || logged === undefined)
    return (
      <Sheet title={say('card.log')} closeLabel={say('app.close')} onClose={onClose}>
        <p>{say('run.gone')}</p>
      </Sheet>
    )
  const put = (change: Partial<Firing>) =>
    set(Object.fromEntries(Object.entries(change).map(([field, value]) => [`${at}.${field}`, value])))
  const massWay = fieldWay('firingLog.massKg', words)
  const byPrices = openMoneyByPrices(plan, firing)
  const findings = logFindings(plan, firing, todayIso())
  const { low, high } = logged.expectedProduct
  return (
    <Sheet
      title={say('run.firing-number', { number: number(index + 1) })}
      closeLabel={say('app.close')}
      onClose={onClose}
      height="full"
      foot={
        <div className="figs foot-figs">
          {logged.yieldOfFresh && <KeyFigure label={say('run.yield')} of={logged.yieldOfFresh} />}
          {logged.woodPerFresh && <KeyFigure label={say('run.wood-per-fish')} of={logged.woodPerFresh} />}
          {logged.net && <KeyFigure label={say('run.net')} of={logged.net} />}
        </div>
      }
    >
      {findings.length > 0 && <Findings findings={findings} />}
      <div className="fields">
        <DayField
          id={`${at}.day`}
          name={say('run.day')}
          day={firing.day}
          onChange={(day) => day !== null && put({ day })}
        />
        <NumberField
          id={`${at}.freshKg`}
          name={say('run.fresh')}
          value={firing.freshKg}
          way={massWay}
          limit={{ ...LIMITS['firingLog.massKg'], min: LEAST_FISH_KG }}
          onChange={(freshKg) => put({ freshKg })}
        />
        <OpenNumberField
          id={`${at}.productKg`}
          name={say('run.product')}
          value={firing.productKg}
          way={massWay}
          onChange={(productKg) => put({ productKg })}
          help={say('run.expected', { from: mass(low.value), to: mass(high.value) })}
        />
        <OpenNumberField
          id={`${at}.woodKg`}
          name={say('run.wood-in')}
          value={firing.woodKg}
          way={massWay}
          onChange={(woodKg) => put({ woodKg })}
          help={say('run.expected-wood', {
            from: number(log.expectedWood.low.value),
            to: number(log.expectedWood.high.value),
          })}
        />
        <OpenNumberField
          id={`${at}.hours`}
          name={say('run.hours-in')}
          value={firing.hours}
          way={fieldWay('firingLog.hours', words)}
          onChange={(hours) => put({ hours })}
        />
      </div>
      <h3>{say('run.money')}</h3>
      {Object.keys(byPrices).length > 0 && (
        <Button shape="big" icon="coins" onPress={() => put(byPrices)}>
          {say('run.by-prices')}
        </Button>
      )}
      <div className="fields">
        {MONEY.map((field) => (
          <MoneyField
            key={field}
            id={`${at}.${field}`}
            name={named(`run.${field}`)}
            minor={firing[field]}
            onChange={(minor) => put({ [field]: minor })}
          />
        ))}
      </div>
      <TextField name={say('run.note')} value={firing.note} most={500} onChange={(note) => put({ note })} />
      <Button
        shape="big"
        icon="close"
        onPress={() => {
          set({ [at]: undefined })
          onClose()
          notify({
            key: 'run.removed',
            args: { day: showIsoDay(firing.day) },
            undo: () => {
              setField(at, firing)
            },
          })
        }}
      >
        {say('run.remove')}
      </Button>
    </Sheet>
  )
}
