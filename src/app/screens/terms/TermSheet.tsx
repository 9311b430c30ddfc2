import { use } from 'react'
import { LinkButton } from '../../parts/Button.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { glossaryOf } from '../../state/glossary.ts'
import { NOT_YET_CHECKED } from '../../words/language.ts'
import { useWords } from '../../words/use-words.tsx'
import { TRADE_WORDS } from '../route.ts'
import { TermPicture } from './TermPicture.tsx'
import './terms.css'

/** One trade word over the screen where it was met: picture, meaning, and the way to all of them. */
export function TermSheet({ term, onClose }: { readonly term: string; readonly onClose: () => void }) {
  const { say, language } = useWords()
  const word = use(glossaryOf(language))[term]
  if (word === undefined) return null
  return (
    <Sheet title={word.term} closeLabel={say('app.close')} onClose={onClose}>
      <div className="term-picture">
        <TermPicture term={term} />
      </div>
      <p>{word.means}</p>
      {NOT_YET_CHECKED.has(language) && <p className="quiet">{say('settings.language-unchecked')}</p>}
      <LinkButton href={TRADE_WORDS} icon="words">
        {say('terms.all')}
      </LinkButton>
    </Sheet>
  )
}
