import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'

const root = path.resolve(import.meta.dirname, '../../..')
interface Term {
  readonly term: string
  readonly means: string
  /** What a message that speaks of the thing holds, as a regular expression: the word in its bent forms. */
  readonly pattern: string
}
const read = <T>(file: string) => JSON.parse(readFileSync(path.join(root, file), 'utf8')) as T
const glossary = (language: string) => read<Readonly<Record<string, Term>>>(`shared/glossary.${language}.json`)
const messages = (language: string) =>
  new Map(
    readdirSync(path.join(root, 'src/app/words', language))
      .filter((name) => name.endsWith('.json'))
      .flatMap((name) => Object.entries(read<Record<string, string>>(`src/app/words/${language}/${name}`))),
  )

const english = messages('en')
const terms = Object.entries(glossary('en'))

describe.each(['fr', 'pt', 'sw', 'ha'])('the trade words in %s', (language) => {
  const own = glossary(language)
  const words = messages(language)

  it('are the same words, each explained', () => {
    expect(Object.keys(own)).toEqual(terms.map(([key]) => key))
    expect(Object.values(own).filter(({ term, means }) => term === '' || means.length < 15)).toEqual([])
  })

  // A translator may turn a sentence so that one word falls away; of a hundred messages at least ninety keep it.
  it.each(terms)('%s is called by its word', (key, { pattern }) => {
    const bare = (text: string) => text.replaceAll(/\{\w+/g, '')
    const speakOf = [...english].filter(([, text]) => new RegExp(pattern, 'i').test(bare(text))).map(([name]) => name)
    const without = speakOf.filter((name) => !new RegExp(own[key]?.pattern ?? '^$', 'i').test(words.get(name) ?? ''))
    expect(speakOf.length).toBeGreaterThan(2)
    expect(without.length > 0.1 * speakOf.length ? without : []).toEqual([])
  })
})
