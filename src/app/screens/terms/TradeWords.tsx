import { use, useId, useState } from 'react'
import { LinkButton } from '../../parts/Button.tsx'
import { Segments } from '../../parts/Picks.tsx'
import { glossaryOf } from '../../state/glossary.ts'
import { NOT_YET_CHECKED } from '../../words/language.ts'
import { useWords } from '../../words/use-words.tsx'
import { FrontBranch } from '../FrontBranch.tsx'
import { HOW, TRADE_WORDS } from '../route.ts'
import { TERM_GROUP_KEYS, TERM_GROUPS, type TermGroup } from './pictures.ts'
import { TermPicture } from './TermPicture.tsx'
import './terms.css'

/** Letters alone: a search finds béton by beton, ƙasa by kasa. */
const plain = (text: string): string =>
  text
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[ɓɗƙ]/g, (letter) => ({ ɓ: 'b', ɗ: 'd', ƙ: 'k' })[letter] ?? letter)

/** All trade words with their pictures: by what they belong to, or by what somebody looks for. */
export function TradeWords() {
  const { say, named, language } = useWords()
  const glossary = use(glossaryOf(language))
  const [sought, setSought] = useState('')
  const [group, setGroup] = useState<TermGroup>('walls')
  const field = useId()
  const looked = plain(sought.trim())
  const keys =
    looked === ''
      ? Object.keys(TERM_GROUPS[group])
      : Object.keys(glossary).filter((key) =>
          plain(`${glossary[key]?.term ?? ''} ${glossary[key]?.means ?? ''}`).includes(looked),
        )
  return (
    <FrontBranch path={TRADE_WORDS} title={say('front.terms')}>
      <div className="field">
        <label className="field-name" htmlFor={field}>
          {say('terms.search')}
        </label>
        <div className="typed text">
          <input
            id={field}
            type="search"
            autoComplete="off"
            value={sought}
            onChange={(event) => {
              setSought(event.currentTarget.value)
            }}
          />
        </div>
      </div>
      {looked === '' && (
        <Segments
          name={say('terms.groups')}
          isNameShown={false}
          choices={TERM_GROUP_KEYS.map((key) => ({ key, label: named(`terms.group.${key}`) }))}
          chosen={group}
          onChoose={setGroup}
        />
      )}
      {NOT_YET_CHECKED.has(language) && <p className="quiet">{say('settings.language-unchecked')}</p>}
      <p className="quiet" role="status">
        {looked !== '' && say('terms.found', { count: keys.length })}
      </p>
      <dl className="trade-words">
        {keys.map((key) => (
          <div key={key}>
            <dt>{glossary[key]?.term}</dt>
            <dd className="term-picture">
              <TermPicture term={key} />
            </dd>
            <dd>{glossary[key]?.means}</dd>
          </div>
        ))}
      </dl>
      <LinkButton href={HOW} shape="big" icon="run">
        {say('front.how')}
      </LinkButton>
    </FrontBranch>
  )
}
