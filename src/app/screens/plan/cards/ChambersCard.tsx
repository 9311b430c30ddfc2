import { chambersFor, fishLoad } from '../../../../core/fish/load.ts'
import { wallThickness } from '../../../../core/fish/wall-thickness.ts'
import { clearSideFromOutside, outsideFromClearSide } from '../../../../core/geometry/outline.ts'
import { Button } from '../../../parts/Button.tsx'
import { useWords } from '../../../words/use-words.tsx'
import { fieldWay } from '../../fields/field-way.ts'
import { NumberField, PlanField } from '../../fields/PlanField.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'

const SIDE = 'chambers.clearSideM'

/** How many chambers and how wide: the clear side inside or the whole front, whichever one has measured. */
export function ChambersCard() {
  const words = useWords()
  const { say } = words
  const { plan, set } = usePlan()
  const { count, clearSideM } = plan.chambers
  const wallM = wallThickness(plan).value
  const way = fieldWay(SIDE, words)
  const overall = (sideM: number) => outsideFromClearSide(sideM, count, wallM)
  const enough = chambersFor(plan)
  return (
    <>
      <PlanField at="chambers.count" />
      {!enough.carries ? (
        <p className="quiet">{say('chambers.cannot', { count: enough.count })}</p>
      ) : enough.count === count ? (
        <p className="quiet">{say('chambers.is-enough')}</p>
      ) : (
        <Button onPress={() => set({ 'chambers.count': enough.count })}>
          {say('chambers.enough', { count: enough.count })}
        </Button>
      )}
      <p className="quiet">{say('chambers.outside-help')}</p>
      <div className="fields">
        <PlanField at={SIDE} />
        <NumberField
          id="chambers.outside"
          name={say('field.chambers.outside')}
          value={overall(clearSideM)}
          way={way}
          limit={{ ...way.limit, min: overall(way.limit.min), max: overall(way.limit.max) }}
          onChange={(outsideM) => set({ [SIDE]: clearSideFromOutside(outsideM, count, wallM) })}
        />
      </div>
      <h3>{say('chambers.trade')}</h3>
      <ul>
        {fishLoad(plan)
          .trade.filter(({ level }) => level !== 'too-tall')
          .slice(0, 4)
          .map(({ chambers, traysPerChamber, level }) => (
            <li key={chambers}>
              <Button
                shape="big"
                tone={chambers === count && traysPerChamber === plan.trays.perChamber ? 'solid' : 'plain'}
                onPress={() => set({ 'chambers.count': chambers, 'trays.perChamber': traysPerChamber })}
              >
                {`${say('chambers.trade-line', { chambers, trays: traysPerChamber })}, ${say(`chambers.stack.${level}`)}`}
              </Button>
            </li>
          ))}
      </ul>
    </>
  )
}
