import { createContext, use, useMemo, type ReactNode } from 'react'
import { DEFAULT_SHOW, type Show } from './show.ts'
import { wordsFor, type Words } from './words.ts'

const ReaderWords = createContext<Words>(wordsFor(DEFAULT_SHOW))

/** Text for this reader: the open plan's units and currency, the phone's separators, the app's language. */
export const useWords = (): Words => use(ReaderWords)

/** Everything inside reads and writes figures in these units. */
export function WordsProvider({ show, children }: { readonly show: Show; readonly children: ReactNode }) {
  const { length, mass, currency } = show
  const { code, digits } = currency
  const words = useMemo(() => wordsFor({ length, mass, currency: { code, digits } }), [length, mass, code, digits])
  return <ReaderWords value={words}>{children}</ReaderWords>
}
