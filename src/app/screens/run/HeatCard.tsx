import { useMemo } from 'react'
import { bothAllow } from '../../../core/heat/agreement.ts'
import { fuel, type Fuel } from '../../../core/heat/fuel.ts'
import { kilnHeat } from '../../../core/heat/kiln-heat.ts'
import { Bars } from '../../drawings/Bars.tsx'
import { DrawingFrame } from '../../parts/DrawingFrame.tsx'
import { useWords } from '../../words/use-words.tsx'
import { PlanField } from '../fields/PlanField.tsx'
import { Findings } from '../plan/Findings.tsx'
import { KeyFigure, KeyRange } from '../working/Worked.tsx'
import type { RunSheetProps } from './RunSheet.tsx'
import { WallsHeat } from './WallsHeat.tsx'

/** Wood for a full firing by two routes, where its heat goes, and what the walls and their filling do with it. */
export function HeatCard({ worked }: RunSheetProps) {
  const { say } = useWords()
  const { plan, fish, tray } = worked
  const wood = useMemo(() => fuel(plan, fish.fullFiring), [plan, fish])
  const heat = useMemo(() => kilnHeat(plan, tray), [plan, tray])
  return (
    <>
      <TwoRoutes wood={wood} freshKg={fish.fullFiring.fresh.value} />
      <PlanField at="firing.woodMoisture" help={say('heat.moisture-why')} />
      <div className="figs step-figs">
        <KeyFigure label={say('heat.of-wood')} of={wood.heatOfWood} />
        <KeyRange
          label={say('heat.efficiency')}
          from={wood.byEnergy.high.efficiency}
          to={wood.byEnergy.low.efficiency}
        />
        <KeyFigure label={say('heat.store')} of={wood.store.mass} />
        <KeyFigure label={say('heat.store-room')} of={wood.store.volume} />
      </div>
      <p className="quiet">{say('heat.store-why', { days: wood.store.days.value })}</p>
      <WallsHeat heat={heat} />
      <h3>{say('heat.draught')}</h3>
      <div className="figs step-figs">
        <KeyFigure label={say('heat.pull')} of={heat.draught} />
        <KeyFigure label={say('heat.breeze')} of={heat.breeze} />
      </div>
      <p className="quiet">{say(heat.breeze.value > heat.draught.value ? 'heat.breeze-wins' : 'heat.draught-wins')}</p>
      <Findings findings={heat.findings} />
    </>
  )
}

function TwoRoutes({ wood, freshKg }: { readonly wood: Fuel; readonly freshKg: number }) {
  const { say, named, mass, number } = useWords()
  const { low, high } = wood.byEnergy
  const both = bothAllow(wood)
  const rows = low.shares.map(({ to, share: one }, index) => {
    const other = high.shares[index]?.share.value ?? one.value
    const least = Math.min(one.value, other)
    const most = Math.max(one.value, other)
    return {
      key: to,
      name: named(`heat-to.${to}`),
      text: `${number(least * 100, 0)}–${number(most * 100, 0)}\u00a0%`,
      parts: [
        { value: least, fill: 'solid' as const },
        { value: most - least, fill: 'hatched' as const },
      ],
    }
  })
  return (
    <>
      <h3>{say('heat.wood', { mass: mass(freshKg) })}</h3>
      <div className="figs step-figs">
        <KeyRange label={say('heat.by-ratio')} from={wood.byRatio.low} to={wood.byRatio.high} />
        <KeyRange label={say('heat.by-energy')} from={low.wood} to={high.wood} />
      </div>
      <p>
        {both === null
          ? say('heat.differ')
          : say('heat.agree', { from: mass(both.low.value), to: mass(both.high.value) })}
      </p>
      <h3>{say('heat.goes')}</h3>
      <DrawingFrame>
        <Bars rows={rows} label={say('heat.goes')} />
      </DrawingFrame>
      <p className="quiet">{say('heat.goes-why')}</p>
    </>
  )
}
