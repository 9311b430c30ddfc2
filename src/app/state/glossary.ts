import { useEffect, useSyncExternalStore } from 'react'
import type { Glossary } from '../words/glossary.ts'
import type { Language } from '../words/language.ts'
import { useLanguage } from '../words/use-words.tsx'

const FILES = import.meta.glob<() => Promise<Uint8Array>>('../../../shared/glossary.*.json', {
  query: '?packed',
  import: 'open',
  eager: true,
})

const asked = new Map<Language, Promise<Glossary>>()
const here = new Map<Language, Glossary>()
const listeners = new Set<() => void>()

/** The trade words of a language, opened from the phone's own store once somebody reads a sentence that may hold one. */
export function glossaryOf(language: Language): Promise<Glossary> {
  const known = asked.get(language)
  if (known !== undefined) return known
  const reading = read(language)
  asked.set(language, reading)
  reading.catch(() => asked.delete(language))
  return reading
}

async function read(language: Language): Promise<Glossary> {
  const [, open] = Object.entries(FILES).find(([file]) => file.includes(`glossary.${language}.`)) ?? []
  if (open === undefined) throw new Error(`no trade words in ${language}`)
  const glossary = JSON.parse(new TextDecoder().decode(await open())) as Glossary
  here.set(language, glossary)
  for (const listener of listeners) listener()
  return glossary
}

const follow = (onChange: () => void) => {
  listeners.add(onChange)
  return () => {
    listeners.delete(onChange)
  }
}

/** The trade words of the reader's language, or null until they are here; sentences are whole without them. */
export function useGlossary(): Glossary | null {
  const language = useLanguage()
  useEffect(() => {
    glossaryOf(language).catch(() => {})
  }, [language])
  const now = () => here.get(language) ?? null
  return useSyncExternalStore(follow, now, now)
}
