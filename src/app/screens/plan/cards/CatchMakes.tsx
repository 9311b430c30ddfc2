import { useMemo } from 'react'
import { airFindings } from '../../../../core/heat/air-findings.ts'
import { chambersFor, fishLoad } from '../../../../core/fish/load.ts'
import { drying } from '../../../../core/fish/drying.ts'
import { Bars, type BarRow } from '../../../drawings/Bars.tsx'
import { Button } from '../../../parts/Button.tsx'
import { DrawingFrame } from '../../../parts/DrawingFrame.tsx'
import { useWords } from '../../../words/use-words.tsx'
import type { Words } from '../../../words/words.ts'
import { usePlan } from '../../fields/plan-in-hand.ts'
import { KeyFigure, KeyRange } from '../../working/Worked.tsx'
import { Findings } from '../Findings.tsx'

/** What the catch makes of the kiln: how full each season leaves it, the fewest chambers that carry it, and what comes out. */
export function CatchMakes() {
  const words = useWords()
  const { say, named } = words
  const { plan, set } = usePlan()
  const load = useMemo(() => fishLoad(plan), [plan])
  const enough = chambersFor(plan)
  const usual = load.seasons[0]
  const dried = usual && drying(plan, usual.fresh)
  return (
    <>
      <h3>{say('catch.full')}</h3>
      <DrawingFrame>
        <Bars rows={load.seasons.map((season) => fullRow(season, words))} label={say('catch.full')} />
      </DrawingFrame>
      {enough.carries ? (
        <>
          <p>{say('catch.needs', { chambers: enough.count, trays: plan.trays.perChamber })}</p>
          {enough.count === plan.chambers.count ? (
            <p className="quiet">{say('catch.chosen')}</p>
          ) : (
            <Button shape="big" onPress={() => set({ 'chambers.count': enough.count })}>
              {say('catch.choose', { count: enough.count })}
            </Button>
          )}
        </>
      ) : (
        <p>{say('chambers.cannot', { count: enough.count })}</p>
      )}
      {dried && (
        <>
          <h3>{say('catch.becomes')}</h3>
          <div className="figs step-figs">
            <KeyRange label={say('catch.becomes-product')} from={dried.productRange.low} to={dried.productRange.high} />
            <KeyFigure label={say('catch.becomes-water')} of={dried.waterOut} />
            <KeyFigure label={say('catch.becomes-yield')} of={dried.yieldOfFresh} />
            <KeyFigure label={say('catch.becomes-dearer')} of={dried.dearer} />
          </div>
          <p className="quiet">
            {say('catch.range-why', {
              product: named(`catch.product.${dried.kind.key}`).toLocaleLowerCase(),
              from: dried.kind.moistureFrom,
              to: dried.kind.moistureTo,
            })}
          </p>
        </>
      )}
      <Findings findings={airFindings(plan)} />
    </>
  )
}

/** A bar as long as the kiln is large: solid what the season fills, hatched what is too much. */
function fullRow({ season, fullness }: ReturnType<typeof fishLoad>['seasons'][number], words: Words): BarRow {
  const full = fullness.value
  const share = words.share(Math.round(full * 100) / 100)
  return {
    key: season,
    name: words.named(`catch.season.${season}`),
    text: words.say(full > 1 ? 'catch.over-told' : 'catch.full-told', { share }),
    parts: [
      { value: Math.min(full, 1), fill: 'solid' },
      { value: Math.max(0, full - 1), fill: 'hatched' },
      { value: Math.max(0, 1 - full), fill: 'empty' },
    ],
  }
}
