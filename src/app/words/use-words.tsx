import { createContext, use, useMemo, useSyncExternalStore, type ReactNode } from 'react'
import { followLanguage, languageNow, type Language } from './language.ts'
import { DEFAULT_SHOW, type Show } from './show.ts'
import { wordsFor, type Words } from './words.ts'

const ReaderWords = createContext<Words>(wordsFor(DEFAULT_SHOW))

/** Text for this reader: the open plan's units and currency, the phone's separators, the app's language. */
export const useWords = (): Words => use(ReaderWords)

/** The language of the words; whoever asks is drawn again when it changes. */
export const useLanguage = (): Language => useSyncExternalStore(followLanguage, languageNow, languageNow)

/** Everything inside reads and writes figures in these units. */
export function WordsProvider({ show, children }: { readonly show: Show; readonly children: ReactNode }) {
  const { length, mass, currency } = show
  const { code, digits } = currency
  const language = useLanguage()
  const words = useMemo(
    () => wordsFor({ length, mass, currency: { code, digits } }, language),
    [length, mass, code, digits, language],
  )
  return <ReaderWords value={words}>{children}</ReaderWords>
}
