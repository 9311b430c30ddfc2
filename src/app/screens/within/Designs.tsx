import { designPlan, type Design } from '../../../core/choosing/within-our-money.ts'
import { outlineOf } from '../../../core/geometry/outline.ts'
import type { Plan } from '../../../core/plan/schema.ts'
import { MiniKiln } from '../../drawings/MiniKiln.tsx'
import { Button } from '../../parts/Button.tsx'
import { WideTable } from '../../parts/WideTable.tsx'
import { useWords } from '../../words/use-words.tsx'
import { designKey, givenUpText, wallsText } from './design-text.ts'

const MOST_SHOWN = 6
const WIDEST_PX = 96
const MOST_PX_PER_M = 60

/** The cheapest, the largest, and some between them at even steps. */
function spread(designs: readonly Design[]): readonly Design[] {
  const last = designs.length - 1
  if (last < MOST_SHOWN) return designs
  const places = Array.from({ length: MOST_SHOWN }, (_, at) => Math.round((at * last) / (MOST_SHOWN - 1)))
  return designs.filter((_, at) => places.includes(at))
}

/** Kilns worth choosing, cheapest first, with what each gives up; one tap makes one the plan. */
export function Designs({
  frontier,
  plan,
  budgetMinor,
  onTake,
}: {
  readonly frontier: readonly Design[]
  readonly plan: Plan
  readonly budgetMinor: number
  readonly onTake: (design: Design) => void
}) {
  const { say } = useWords()
  const shown = spread(frontier).map((design) => ({ design, built: designPlan(plan, design) }))
  const longestM = Math.max(1, ...shown.map(({ built }) => outlineOf(built).outsideLength.value))
  const unitsPerM = Math.min(MOST_PX_PER_M, WIDEST_PX / longestM)
  return (
    <section className="stack">
      <h3>{say('within.choose')}</h3>
      <ul>
        {shown.map(({ design, built }) => (
          <li key={designKey(design)} className="within-row">
            <MiniKiln plan={built} unitsPerM={unitsPerM} />
            <OneDesign design={design} frontier={frontier} budgetMinor={budgetMinor} onTake={onTake} />
          </li>
        ))}
      </ul>
      {frontier.length > 1 && <AllDesigns frontier={frontier} />}
    </section>
  )
}

function OneDesign({
  design,
  frontier,
  budgetMinor,
  onTake,
}: {
  readonly design: Design
  readonly frontier: readonly Design[]
  readonly budgetMinor: number
  readonly onTake: (design: Design) => void
}) {
  const words = useWords()
  const { say, money, mass, length } = words
  const lost = givenUpText(design, frontier, words)
  const place = design === frontier[0] ? 'best' : design === frontier.at(-1) ? 'largest' : null
  return (
    <div>
      {place !== null && <p className="quiet">{say(`within.${place}`)}</p>}
      <b>{money(design.totalMinor)}</b>
      <p>{say('within.takes', { mass: mass(design.freshKgPerDay), left: money(budgetMinor - design.totalMinor) })}</p>
      <p>{wallsText(design.walls, words)}</p>
      <p className="quiet">
        {say('within.what', {
          chambers: design.chambers,
          side: length(design.clearSideM),
          trays: design.perChamber,
          height: length(design.aboveM),
        })}
      </p>
      {lost.length > 0 && <p>{say('within.gives-up', { what: lost.join('; ') })}</p>}
      <Button
        onPress={() => {
          onTake(design)
        }}
        label={`${say('within.take')}: ${money(design.totalMinor)}, ${mass(design.freshKgPerDay)}`}
      >
        {say('within.take')}
      </Button>
    </div>
  )
}

const COLUMNS = ['money', 'fish', 'walls', 'chambers', 'trays', 'days', 'bought'] as const

/** Every point of the chart in figures. */
function AllDesigns({ frontier }: { readonly frontier: readonly Design[] }) {
  const words = useWords()
  const { say, money, mass, number, length } = words
  return (
    <details className="work-step">
      <summary>
        <b>{say('within.table')}</b>
      </summary>
      <WideTable name={say('within.table')}>
        <table className="within-rows">
          <thead>
            <tr>
              {COLUMNS.map((column) => (
                <th key={column} scope="col">
                  {say(`within.col.${column}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {frontier.map((one) => (
              <tr key={designKey(one)}>
                <th scope="row">{money(one.totalMinor)}</th>
                <td>{mass(one.freshKgPerDay)}</td>
                <td>{wallsText(one.walls, words)}</td>
                <td>
                  {number(one.chambers)} × {length(one.clearSideM)}
                </td>
                <td>{number(one.perChamber)}</td>
                <td>{number(one.days)}</td>
                <td>{money(one.boughtInMinor)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </WideTable>
    </details>
  )
}
