import { readWords } from 'virtual:words'
import { addWords, speakWith } from './catalogue.ts'
import { setNumberLocale } from './locale.ts'

/** The languages of the product, each by its own name. */
export const LANGUAGES = { en: 'English', fr: 'Français', pt: 'Português', sw: 'Kiswahili', ha: 'Hausa' } as const
export type Language = keyof typeof LANGUAGES

/** Translated by machine and read by no native speaker so far; whoever has read one strikes it out here. */
export const NOT_YET_CHECKED: ReadonlySet<Language> = new Set<Language>(['fr', 'pt', 'sw', 'ha'])

const KEPT_AS = 'kilnwright.language'
const RIGHT_TO_LEFT: ReadonlySet<string> = new Set()

const isLanguage = (text: string | null | undefined): text is Language =>
  text !== null && text !== undefined && Object.hasOwn(LANGUAGES, text)

let language: Language = 'en'
let opened: Promise<void> | undefined
const listeners = new Set<() => void>()

export const languageNow = (): Language => language

export function followLanguage(onChange: () => void): () => void {
  listeners.add(onChange)
  return () => {
    listeners.delete(onChange)
  }
}

/** All words of the language in use; before, only English has those of the front page. */
export function openWords(): Promise<void> {
  opened ??= readWords(language).then(addWords, (why: unknown) => {
    opened = undefined
    throw why
  })
  return opened
}

/** Changes the language in place: words, numbers, and what the page says of itself. Nothing changes where the words cannot be had. */
export async function speak(next: Language): Promise<void> {
  const messages = await readWords(next)
  language = next
  opened = Promise.resolve()
  speakWith(next, messages)
  setNumberLocale(numberTag(next, phoneTags()))
  document.documentElement.lang = next
  document.documentElement.dir = RIGHT_TO_LEFT.has(next) ? 'rtl' : 'ltr'
  for (const listener of listeners) listener()
}

/** The same, remembered on this phone; in a private window it lasts until the page goes. */
export async function chooseLanguage(next: Language): Promise<void> {
  await speak(next)
  try {
    localStorage.setItem(KEPT_AS, next)
  } catch {
    // Nothing is lost but the choice of language.
  }
}

/** The language chosen on this phone, else the first of the phone's own that we have, else English. */
export async function startLanguage(): Promise<void> {
  const first = keptLanguage() ?? phoneTags().map(baseOf).find(isLanguage) ?? 'en'
  if (first !== 'en') await speak(first)
  else setNumberLocale(numberTag('en', phoneTags()))
}

function keptLanguage(): Language | null {
  try {
    const kept = localStorage.getItem(KEPT_AS)
    return isLanguage(kept) ? kept : null
  } catch {
    return null
  }
}

const phoneTags = (): readonly string[] => (navigator.languages.length > 0 ? navigator.languages : [navigator.language])
const baseOf = (tag: string): string => tag.split('-')[0]?.toLowerCase() ?? ''

/**
 * The tag that numbers, money and dates follow: the phone's own where it is in this language (fr-SN), else this language in the phone's region;
 * a phone in a language that we do not have keeps its numbers beside English words.
 */
export function numberTag(words: Language, tags: readonly string[]): string {
  const own = tags.find((tag) => baseOf(tag) === words)
  if (own !== undefined) return own
  const [first = 'en'] = tags
  if (words === 'en' && !isLanguage(baseOf(first))) return first
  const region = /-([A-Z]{2})\b/.exec(first)?.[1]
  return region === undefined ? words : `${words}-${region}`
}
