import { useState } from 'react'
import type { FiringLog } from '../../../core/schedule/firing-log.ts'
import { LinkButton } from '../../parts/Button.tsx'
import { Segments } from '../../parts/Picks.tsx'
import { useWords } from '../../words/use-words.tsx'
import { Findings } from '../plan/Findings.tsx'
import { cardHref } from '../route.ts'
import { KeyFigure } from '../working/Worked.tsx'
import { ChartKey, LogChart, type LogFigure } from './LogCharts.tsx'
import { LogRows } from './LogRows.tsx'

const FIGURES = ['yield', 'wood', 'net'] as const
const ROWS = 3

/** What came of the firings so far: one chart at a time against what was expected, the last few as written. */
export function LogPart({ log, planId }: { readonly log: FiringLog; readonly planId: string }) {
  const { say } = useWords()
  const [of, setOf] = useState<LogFigure>('yield')
  if (log.firings.length === 0)
    return (
      <>
        <h2>{say('card.log')}</h2>
        <p className="quiet">{say('run.no-log')}</p>
      </>
    )
  return (
    <>
      <h2>{say('card.log')}</h2>
      <LogChart log={log} of={of} />
      <ChartKey />
      <Segments
        name={say('run.chart')}
        choices={FIGURES.map((key) => ({ key, label: say(`run.chart-short.${key}`) }))}
        chosen={of}
        onChoose={setOf}
      />
      <div className="figs step-figs">
        {log.yieldOfFresh && <KeyFigure label={say('run.yield-all')} of={log.yieldOfFresh} />}
        {log.woodPerFresh && <KeyFigure label={say('run.wood-all')} of={log.woodPerFresh} />}
        {log.netOf > 0 && <KeyFigure label={say('run.net-all', { count: log.netOf })} of={log.net} />}
      </div>
      {log.findings.length > 0 && <Findings findings={log.findings} />}
      <LogRows log={log} planId={planId} most={ROWS} />
      {log.firings.length > ROWS && (
        <LinkButton href={cardHref(planId, 'run', 'log')} shape="big" icon="days">
          {say('run.all-firings', { count: log.firings.length })}
        </LinkButton>
      )}
    </>
  )
}
