import { use, type ReactNode } from 'react'
import { Term } from '../../parts/Term.tsx'
import { useGlossary } from '../../state/glossary.ts'
import { markWords } from '../../words/glossary.ts'
import { useWords } from '../../words/use-words.tsx'
import { TermContext } from './term-context.ts'

/** Sentences read one after another, whose trade words can be tapped where they first stand. */
export function useMarked(texts: readonly string[]): readonly ReactNode[] {
  const { say } = useWords()
  const glossary = useGlossary()
  const open = use(TermContext)
  if (glossary === null || open === null) return texts
  const seen = new Set<string>()
  return texts.map((text) =>
    markWords(text, glossary, seen).map(({ text: part, key }) =>
      key === undefined ? (
        part
      ) : (
        <Term
          key={key}
          word={part}
          label={say('terms.tap', { word: part })}
          onOpen={() => {
            open(key)
          }}
        />
      ),
    ),
  )
}

/** A sentence that stands alone, its trade words to be tapped. */
export const Marked = ({ text }: { readonly text: string }) => useMarked([text])[0]
