import { useMemo } from 'react'
import { withWalls, type WallChoice } from '../../../core/choosing/with-walls.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { Bars } from '../../parts/Bars.tsx'
import { Button } from '../../parts/Button.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { useWords } from '../../words/use-words.tsx'
import { usePlanHand } from '../fields/plan-in-hand.ts'
import type { PlanRoute } from '../PlanHere.tsx'
import { UnitPicture } from '../pictures/UnitPicture.tsx'
import { placeHref } from '../route.ts'
import { useCloseCard } from '../use-close-card.ts'
import { Worked } from '../working/Worked.tsx'
import './compare.css'
import { Lives } from './Lives.tsx'
import { barShares, compareRows, MEASURES, type CompareRow, type Measure } from './rows.ts'

/** Wall units side by side at the same catch: what they cost, how many to lay, how long until the first smoke, how long they are said to last. */
export function CompareSheet({ route, worked }: { readonly route: PlanRoute; readonly worked: WorkedOut }) {
  const words = useWords()
  const { say, mass } = words
  const { edit } = usePlanHand()
  const close = useCloseCard(placeHref(route.id, 'plan'))
  const rows = useMemo(() => compareRows(worked), [worked])
  const take = (choice: WallChoice) => {
    edit((now) => withWalls(now, choice))
    close()
  }
  return (
    <Sheet title={say('compare.title')} closeLabel={say('app.close')} onClose={close} height="full">
      <p className="quiet">{say('compare.same-catch', { mass: mass(worked.plan.catch.freshKgPerDay) })}</p>
      {MEASURES.map((measure) => (
        <section key={measure}>
          <h3 className="compare-head">{say(`compare.${measure}`)}</h3>
          <MeasureBars measure={measure} rows={rows} />
        </section>
      ))}
      <section>
        <h3 className="compare-head">{say('compare.lives')}</h3>
        <Lives rows={rows} />
      </section>
      <section className="stack">
        <h3 className="compare-head">{say('compare.each')}</h3>
        {rows.map((row) => (
          <Each key={row.unit.key} row={row} onTake={take} />
        ))}
      </section>
    </Sheet>
  )
}

function MeasureBars({ measure, rows }: { readonly measure: Measure; readonly rows: readonly CompareRow[] }) {
  const { say, named } = useWords()
  // What is priced only in part would look cheap: it gets words in place of a bar.
  const isKnown = ({ unpriced }: CompareRow) => (measure !== 'money' && measure !== 'bought') || unpriced === 0
  const shares = barShares(rows.map((row) => (isKnown(row) ? row.figures[measure].value : 0)))
  return (
    <Bars
      bars={rows.map((row, index) => {
        const name = named(`family.${row.unit.family}`)
        return {
          key: row.unit.key,
          name,
          share: isKnown(row) ? (shares[index] ?? 0) : null,
          isOn: row.choice === null,
          figure: isKnown(row) ? (
            <Worked of={row.figures[measure]} label={name} />
          ) : (
            <span className="quiet">{say('compare.unpriced', { count: row.unpriced })}</span>
          ),
        }
      })}
    />
  )
}

function Each({ row, onTake }: { readonly row: CompareRow; readonly onTake: (choice: WallChoice) => void }) {
  const { say, named, sizes } = useWords()
  const { unit, choice, problems } = row
  return (
    <div className="compare-each">
      <UnitPicture unit={unit} />
      <div>
        <b>{named(`family.${unit.family}`)}</b>
        <p className="quiet">{sizes(unit.lengthM, unit.widthM, unit.heightM)}</p>
        {problems > 0 && <p>{say('compare.problems', { count: problems })}</p>}
        {choice === null ? (
          <p>
            <b>{say('compare.present')}</b>
          </p>
        ) : (
          <Button
            onPress={() => {
              onTake(choice)
            }}
          >
            {say('compare.take', { family: named(`family.${unit.family}`).toLocaleLowerCase() })}
          </Button>
        )}
      </div>
    </div>
  )
}
