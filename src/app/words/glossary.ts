/** A trade word in one language: what it is called, one plain sentence, and how messages bend it. */
export interface TradeWord {
  readonly term: string
  readonly means: string
  /** A regular expression without groups that finds the word in a sentence; the term itself, alone or with an s, where there is none. */
  readonly pattern?: string
  /** A word of every day, or one that means other things too: explained in the list, never marked in a sentence. */
  readonly quiet?: boolean
}

export type Glossary = Readonly<Record<string, TradeWord>>

/** Letters before and after are no part of it. No look-behind: Safari 15.4 has none. */
const whole = (inner: string, flags: string) => new RegExp(`(^|[^\\p{L}])${inner}(?!\\p{L})`, flags)

const patternOf = ({ term, pattern }: TradeWord): string => pattern ?? `${term}s?`

/** Whether a sentence speaks of the thing. */
export const speaksOf = (text: string, word: TradeWord): boolean => whole(`(?:${patternOf(word)})`, 'iu').test(text)

/** A stretch of a sentence; with a key where it is a trade word that can be opened. */
export interface Stretch {
  readonly text: string
  readonly key?: string
}

/** Cuts a sentence at its trade words, each where it first stands; those in `seen` were marked before, and these join them. */
export function markWords(text: string, glossary: Glossary, seen: Set<string> = new Set()): Stretch[] {
  const keys = Object.keys(glossary).filter((key) => glossary[key]?.quiet !== true)
  const finder = finderOf(glossary, keys)
  const stretches: Stretch[] = []
  let from = 0
  for (const found of text.matchAll(finder)) {
    const [all, lead = '', ...words] = found
    const index = words.findIndex(Boolean)
    const key = keys[index]
    if (key === undefined || seen.has(key)) continue
    seen.add(key)
    const at = found.index + lead.length
    if (at > from) stretches.push({ text: text.slice(from, at) })
    stretches.push({ text: all.slice(lead.length), key })
    from = found.index + all.length
  }
  if (from < text.length) stretches.push({ text: text.slice(from) })
  return stretches
}

const finders = new WeakMap<Glossary, RegExp>()

/** One expression for all words of a language, a group for each. */
function finderOf(glossary: Glossary, keys: readonly string[]): RegExp {
  const known = finders.get(glossary)
  if (known !== undefined) return known
  const groups = keys.flatMap((key) => (glossary[key] ? [`(${patternOf(glossary[key])})`] : []))
  const finder = whole(`(?:${groups.join('|')})`, 'giu')
  finders.set(glossary, finder)
  return finder
}
