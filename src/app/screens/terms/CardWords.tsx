import { use } from 'react'
import { useGlossary } from '../../state/glossary.ts'
import { useWords } from '../../words/use-words.tsx'
import type { PlanCard } from '../plan/cards.ts'
import { TappedWord } from './TappedWord.tsx'
import { TermContext } from './term-context.ts'

/** Trade words of each decision, where the choices themselves speak them. */
const OF_CARD: Partial<Record<PlanCard, string>> = {
  catch: 'catch fresh product moisture season firing',
  chambers: 'chamber divider',
  walls: 'unit hollow course joint lap bond face lining render fill',
  openings: 'opening lintel arch draught',
  ground: 'footing trench hearth apron hardcore slab level pan',
  trays: 'tray rail batten mesh staple cover stack offcut',
  place: 'draught smoke post rafter purlin',
  mixes: 'mortar concrete cement batch lot waste breakage',
  money: 'budget',
}

/** The words of a decision in one line at its end, each to be opened. */
export function CardWords({ card }: { readonly card: PlanCard }) {
  const { say } = useWords()
  const glossary = useGlossary()
  const open = use(TermContext)
  const keys = OF_CARD[card]?.split(' ') ?? []
  if (glossary === null || open === null || keys.length === 0) return null
  return (
    <>
      <h3>{say('terms.here')}</h3>
      <div className="term-row">
        {keys.map((key) => (
          <TappedWord key={key} term={key} word={glossary[key]?.term ?? ''} open={open} />
        ))}
      </div>
    </>
  )
}
