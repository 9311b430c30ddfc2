import { use, type ReactNode } from 'react'
import { useGlossary } from '../../state/glossary.ts'
import { markWords } from '../../words/glossary.ts'
import { TappedWord } from './TappedWord.tsx'
import { TermContext } from './term-context.ts'

/** Sentences read one after another, whose trade words can be tapped where they first stand. */
export function useMarked(texts: readonly string[]): readonly ReactNode[] {
  const glossary = useGlossary()
  const open = use(TermContext)
  if (glossary === null || open === null) return texts
  const seen = new Set<string>()
  return texts.map((text) =>
    markWords(text, glossary, seen).map(({ text: part, key }) =>
      key === undefined ? part : <TappedWord key={key} term={key} word={part} open={open} />,
    ),
  )
}

/** A sentence that stands alone, its trade words to be tapped. */
export const Marked = ({ text }: { readonly text: string }) => useMarked([text])[0]
