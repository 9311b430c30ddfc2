import type { FiringLog, LoggedFiring } from '../../../core/schedule/firing-log.ts'
import { FiringChart, type ChartFiring } from '../../drawings/FiringChart.tsx'
import { DrawingFrame } from '../../parts/DrawingFrame.tsx'
import { useWords } from '../../words/use-words.tsx'

/** Columns that fit beside each other at a size one can read. */
const MOST_SHOWN = 12

export type LogFigure = 'yield' | 'wood' | 'net'

/** The last firings, one figure of them, against what was expected. */
export function LogChart({ log, of }: { readonly log: FiringLog; readonly of: LogFigure }) {
  const words = useWords()
  const { say, number } = words
  const before = Math.max(0, log.firings.length - MOST_SHOWN)
  const show = (value: number) =>
    of === 'yield' ? words.share(value) : of === 'wood' ? number(value) : words.money(Math.round(value))
  const firings = log.firings.slice(before).map((one, index) => columnOf(one, of, number(before + index + 1), log))
  const told = firings.map(({ name, value, low, high, isOut }) =>
    value === null
      ? say('run.chart.not-weighed', { name })
      : say(isOut ? 'run.chart.out' : 'run.chart.column', {
          name,
          value: show(value),
          low: show(low ?? value),
          high: show(high ?? value),
          ranged: low === undefined ? 'no' : 'yes',
        }),
  )
  return (
    <div className="stack">
      <h3>{say(`run.chart.${of}`)}</h3>
      <DrawingFrame>
        <FiringChart
          firings={firings}
          label={[say(`run.chart.${of}`), ...told].join(' ')}
          scale={(value) =>
            of === 'net'
              ? number(value / 10 ** words.show.currency.digits, 0)
              : of === 'yield'
                ? number(value * 100)
                : number(value)
          }
        />
      </DrawingFrame>
    </div>
  )
}

function columnOf(one: LoggedFiring, of: LogFigure, name: string, log: FiringLog): ChartFiring {
  const { id: key } = one
  if (of === 'net') return { key, name, value: one.net?.value ?? null, isOut: (one.net?.value ?? 0) < 0 }
  const isYield = of === 'yield'
  const range = isYield ? one.expectedYield : log.expectedWood
  const is = isYield ? one.yieldIs : one.woodIs
  return {
    key,
    name,
    value: (isYield ? one.yieldOfFresh : one.woodPerFresh)?.value ?? null,
    low: range?.low.value,
    high: range?.high.value,
    isOut: is === 'below' || is === 'above',
  }
}

/** What the inks of the charts mean. */
export function ChartKey() {
  const { say } = useWords()
  return (
    <ul className="day-key">
      {(['expected', 'got', 'outside'] as const).map((look) => (
        <li key={look}>
          <svg viewBox="0 0 22 16" aria-hidden="true" focusable="false">
            <rect className={`chart-key ${look}`} x="1" y="1" width="20" height="14" />
          </svg>
          {say(`run.key.${look}`)}
        </li>
      ))}
    </ul>
  )
}
