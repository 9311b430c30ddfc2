import { use } from 'react'
import { CHECK_PLACES, type Check, type UnsourcedFigure } from '../../../core/documents/evidence.ts'
import { evidence } from '../../state/evidence.ts'
import { useWords } from '../../words/use-words.tsx'
import type { Words } from '../../words/words.ts'
import { FrontBranch } from '../FrontBranch.tsx'
import { TRUST } from '../route.ts'
import { sourceText } from '../working/source-text.ts'
import './trust.css'

const LIMITS_OF_NUMBERS = ['site', 'load', 'fire', 'food', 'prices'] as const

/** What the product's numbers were held against, what they rest on without a source, and what no number can do. */
export function TrustPage() {
  const { say, named } = useWords()
  const { checks, disagreements, unsourced } = use(evidence())
  return (
    <FrontBranch path={TRUST} title={say('trust.title')}>
      <p>{say('trust.about')}</p>
      <section>
        <h2>{say('trust.limits')}</h2>
        <ul className="told">
          {LIMITS_OF_NUMBERS.map((limit) => (
            <li key={limit}>{named(`trust.limit.${limit}`)}</li>
          ))}
        </ul>
      </section>
      <section>
        <h2>{say('trust.checked')}</h2>
        <p className="quiet">{say('trust.checked-why', { count: checks.length })}</p>
        {CHECK_PLACES.map((place) => (
          <Checked key={place} place={place} checks={checks.filter((check) => check.place === place)} />
        ))}
        <h3>{say('trust.libraries')}</h3>
        <p className="quiet">{say('trust.libraries-why')}</p>
      </section>
      <section>
        <h2>{say('trust.disagree')}</h2>
        <p className="quiet">{say('trust.disagree-why')}</p>
        <ul className="told">
          {disagreements.map(({ id, sources }) => (
            <li key={id}>
              <b>{named(`disagree.${id}`)}</b>
              <span>{named(`disagree.${id}.text`)}</span>
              {sources.map((source) => (
                <small key={source}>{sourceText(source)}</small>
              ))}
            </li>
          ))}
        </ul>
      </section>
      <Unsourced kind="practice" figures={unsourced.filter(({ kind }) => kind === 'practice')} />
      <Unsourced kind="memory" figures={unsourced.filter(({ kind }) => kind === 'memory')} />
    </FrontBranch>
  )
}

function Checked({ place, checks }: { readonly place: Check['place']; readonly checks: readonly Check[] }) {
  const words = useWords()
  return (
    <details className="told-part">
      <summary>
        <span>{words.named(`trust.place.${place}`)}</span>
        <span className="quiet">{words.number(checks.length)}</span>
      </summary>
      <ul className="told">
        {checks.map((check) => (
          <li key={check.id}>
            <b>{words.named(`check.${check.id}`)}</b>
            <span>{nearness(check, words)}</span>
            <small>
              {words.named(`trust.why.${check.why}`)} {sourceText(check.source)}
            </small>
          </li>
        ))}
      </ul>
    </details>
  )
}

/** The expected figure with all its digits: rounding for reading would hide what is checked. */
function nearness({ expected, within, unit, why }: Check, words: Words): string {
  const figure = (value: number) => {
    const { unit: sign } = words.figure(value, unit)
    const digits = words.number(unit === 'm' ? value * 1000 : value, 6)
    return unit === 'm' ? `${digits} mm` : `${digits} ${sign}`.trim()
  }
  return why === 'exact'
    ? words.say('trust.exactly', { expected: figure(expected) })
    : words.say('trust.within', { expected: figure(expected), within: figure(within) })
}

function Unsourced({
  kind,
  figures,
}: {
  readonly kind: UnsourcedFigure['kind']
  readonly figures: readonly UnsourcedFigure[]
}) {
  const words = useWords()
  return (
    <section>
      <h2>{words.named(`trust.${kind}`)}</h2>
      <details className="told-part">
        <summary>
          <span>{words.named(`trust.${kind}-why`, { count: figures.length })}</span>
        </summary>
        <ul className="told">
          {figures.map(({ id, args = {}, unit, least, most }) => (
            <li key={`${id} ${Object.values(args).join(' ')}`} className="lead">
              <span>{words.nameOf({ id, args, value: least, unit, inputs: {} })}</span>
              <span>
                {least === most
                  ? words.inLine(least, unit)
                  : words.say('trust.range', { least: words.inLine(least, unit), most: words.inLine(most, unit) })}
              </span>
            </li>
          ))}
        </ul>
      </details>
    </section>
  )
}
