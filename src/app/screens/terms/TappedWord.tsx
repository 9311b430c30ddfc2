import { Term } from '../../parts/Term.tsx'
import { useWords } from '../../words/use-words.tsx'

/** A trade word that opens its meaning by its key. */
export function TappedWord({
  term,
  word,
  open,
}: {
  readonly term: string
  readonly word: string
  readonly open: (term: string) => void
}) {
  const { say } = useWords()
  return (
    <Term
      word={word}
      label={say('terms.tap', { word })}
      onOpen={() => {
        open(term)
      }}
    />
  )
}
