import type { WorkedOut } from '../../../core/work-out.ts'
import { Icon } from '../../parts/Icon.tsx'
import { useWords } from '../../words/use-words.tsx'
import '../build/build.css'
import { KeyFigure } from '../working/Worked.tsx'

const CAUTIONS = ['air', 'burns', 'wood', 'store', 'food', 'local'] as const

/** Run: what a full firing takes, and what to mind every time. */
export function RunPlace({ worked }: { readonly worked: WorkedOut }) {
  const { say, share } = useWords()
  const { fish, tray } = worked
  const [usual] = fish.seasons
  return (
    <>
      <h2>{say('run.load')}</h2>
      <div className="figs step-figs">
        <KeyFigure label={say('run.fresh')} of={fish.freshPerDay} />
        <KeyFigure label={say('run.per-firing')} of={fish.perFiring} />
        <KeyFigure label={say('run.trays')} of={tray.count} />
        <KeyFigure label={say('run.per-tray')} of={fish.perTray} />
      </div>
      {usual && (
        <p>
          {say('run.fullness')}: <b>{share(usual.fullness.value)}</b>
        </p>
      )}
      <section className="stack">
        <h2>{say('run.cautions')}</h2>
        {CAUTIONS.map((caution) => (
          <p key={caution} className="caution-line">
            <Icon name="caution" />
            <span>{say(`run.caution.${caution}`)}</span>
          </p>
        ))}
      </section>
    </>
  )
}
