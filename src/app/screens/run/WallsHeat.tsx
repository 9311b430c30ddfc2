import { useState } from 'react'
import type { Derived } from '../../../core/basics/derived.ts'
import type { FillingWorth, KilnHeat } from '../../../core/heat/compare-fillings.ts'
import { HEAT_DATA } from '../../../core/heat/heat-data.ts'
import type { KilnHeatReport } from '../../../core/heat/kiln-heat.ts'
import { Bars } from '../../drawings/Bars.tsx'
import { FaceChart } from '../../drawings/FaceChart.tsx'
import { DrawingFrame } from '../../parts/DrawingFrame.tsx'
import { Segments } from '../../parts/Picks.tsx'
import { useWords } from '../../words/use-words.tsx'
import type { Words } from '../../words/words.ts'
import { KeyFigure, KeyRange } from '../working/Worked.tsx'

type When = 'cold' | 'repeated'
const FIGURES = ['wood', 'stored', 'lost', 'outside'] as const
type HeatFigure = (typeof FIGURES)[number]

const figureOf = (heat: KilnHeat, figure: HeatFigure): Derived =>
  figure === 'outside' ? heat.peakOutside : heat[figure]

/** Empty hollows against filled and solid ones, from cold and firing after firing, and the two faces of the wall as planned through a day. */
export function WallsHeat({ heat }: { readonly heat: KilnHeatReport }) {
  const words = useWords()
  const { say, named, number } = words
  const [when, setWhen] = useState<When>('repeated')
  const [figure, setFigure] = useState<HeatFigure>('wood')
  const { fillings, moments } = heat
  const current = fillings.find((one) => one.current) ?? fillings[0]
  const { minuteDegC, secondDegC } = HEAT_DATA.burn
  const rows = fillings.map((one) => {
    const shown = figureOf(one[when], figure)
    return {
      key: one.filling,
      name: named(`drawing.filling.${one.filling}`),
      text: words.inLine(shown.value, shown.unit),
      parts: [{ value: shown.value, fill: one.current ? ('solid' as const) : ('hatched' as const) }],
    }
  })
  return (
    <>
      <h3>{say('heat.walls')}</h3>
      <Segments
        name={say('heat.when')}
        choices={[
          { key: 'cold', label: say('heat.cold') },
          { key: 'repeated', label: say('heat.repeated') },
        ]}
        chosen={when}
        onChoose={setWhen}
      />
      <Segments
        name={say('heat.figure')}
        choices={FIGURES.map((key) => ({ key, label: say(`heat.figure.${key}`) }))}
        chosen={figure}
        onChoose={setFigure}
      />
      <DrawingFrame>
        <Bars rows={rows} label={say(`heat.bars.${figure}`)} />
      </DrawingFrame>
      <p className="quiet">{say(`heat.bars.${figure}`)}</p>
      {verdicts(fillings, words).map((line) => (
        <p key={line}>{line}</p>
      ))}
      {current && (
        <>
          <h4>
            {say('heat.as-planned', { filling: named(`drawing.filling.${current.filling}`).toLocaleLowerCase() })}
          </h4>
          <div className="figs step-figs">
            <KeyFigure label={say('heat.figure.stored')} of={current[when].stored} />
            <KeyFigure label={say('heat.figure.lost')} of={current[when].lost} />
            <KeyFigure label={say('heat.given-back')} of={current[when].returned} />
            <KeyFigure label={say('heat.figure.outside')} of={current[when].peakOutside} />
            <KeyFigure label={say('heat.figure.wood')} of={current[when].wood} />
            <KeyRange
              label={say('heat.lets-through')}
              from={current.transmittance.low}
              to={current.transmittance.high}
            />
          </div>
        </>
      )}
      <h3>{say('heat.faces')}</h3>
      <DrawingFrame unit="°C">
        <FaceChart
          moments={moments}
          limits={[minuteDegC, secondDegC]}
          names={{ inside: say('heat.face.inside'), outside: say('heat.face.outside') }}
          label={facesTold(heat, words)}
          scale={(value) => number(value)}
        />
      </DrawingFrame>
      <p className="quiet">{say('heat.faces-why', { minute: minuteDegC, second: secondDegC })}</p>
    </>
  )
}

/** What the model says of each filling against empty hollows, in wood and at the outer face. */
function verdicts(fillings: readonly FillingWorth[], words: Words): string[] {
  const empty = fillings.find(({ filling }) => filling === 'none')
  if (empty === undefined) return [words.say('heat.no-hollows')]
  const wood = (kg: number) => words.say(kg < 0 ? 'heat.costs' : 'heat.saves', { mass: words.mass(Math.abs(kg)) })
  return fillings
    .filter(({ filling }) => filling === 'sand' || filling === 'clay')
    .map(({ filling, cold, repeated }) =>
      words.say('heat.verdict', {
        filling: words.named(`drawing.filling.${filling}`),
        cold: wood(cold.saved.value),
        repeated: wood(repeated.saved.value),
        from: words.inLine(empty.repeated.peakOutside.value, 'degC'),
        to: words.inLine(repeated.peakOutside.value, 'degC'),
      }),
    )
}

function facesTold({ moments }: KilnHeatReport, { say, inLine }: Words): string {
  const most = (of: (one: KilnHeatReport['moments'][number]) => number) => Math.max(...moments.map(of))
  return say('heat.faces-told', {
    inside: inLine(
      most((one) => one.insideFaceDegC),
      'degC',
    ),
    outside: inLine(
      most((one) => one.outsideFaceDegC),
      'degC',
    ),
  })
}
