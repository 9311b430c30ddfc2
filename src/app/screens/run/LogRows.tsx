import type { Against, FiringLog } from '../../../core/schedule/firing-log.ts'
import { LinkButton } from '../../parts/Button.tsx'
import { Icon } from '../../parts/Icon.tsx'
import { showIsoDay } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import { cardHref, placeHref } from '../route.ts'

/** Firings of the log, the last one first; a tap opens one to be set right. */
export function LogRows({
  log,
  planId,
  most,
}: {
  readonly log: FiringLog
  readonly planId: string
  readonly most?: number
}) {
  const words = useWords()
  const { say, mass } = words
  const rows = log.firings.map((one, index) => ({ ...one, number: index + 1 })).toReversed()
  if (rows.length === 0)
    return (
      <>
        <p className="quiet">{say('run.no-log')}</p>
        <LinkButton href={placeHref(planId, 'run')} icon="plus">
          {say('run.write-up', { number: words.number(1) })}
        </LinkButton>
      </>
    )
  return (
    <ul>
      {rows.slice(0, most).map(({ id, number, firing, yieldIs, woodIs, net }) => {
        const marks = marksOf(yieldIs, woodIs)
        return (
          <li key={id}>
            <a className="dec log-row" href={cardHref(planId, 'run', `log:${id}`)}>
              <span>
                <small>{say('run.firing-on', { number: words.number(number), day: showIsoDay(firing.day) })}</small>
                <b>
                  {firing.productKg === null
                    ? say('run.in-only', { fresh: mass(firing.freshKg) })
                    : say('run.in-out', { fresh: mass(firing.freshKg), product: mass(firing.productKg) })}
                </b>
                <small>
                  {[
                    firing.woodKg === null
                      ? say('run.wood-open')
                      : say('run.wood-burnt', { wood: mass(firing.woodKg) }),
                    net === null ? say('run.money-open') : say('run.left', { money: words.money(net.value) }),
                    ...marks.map((mark) => say(`run.mark.${mark}`)),
                  ].join(' · ')}
                </small>
                {firing.note !== '' && <small>{firing.note}</small>}
              </span>
              {marks.length > 0 ? <Icon name="caution" /> : <Icon name="next" />}
            </a>
          </li>
        )
      })}
    </ul>
  )
}

/** What to ask about a firing that came out otherwise than expected. */
function marksOf(yieldIs: Against | null, woodIs: Against | null): ('short' | 'wet' | 'much-wood')[] {
  const out = yieldIs === 'below' ? ['short' as const] : yieldIs === 'above' ? ['wet' as const] : []
  return woodIs === 'above' ? [...out, 'much-wood'] : out
}
