import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { TERM_GROUPS } from '../../../src/app/screens/terms/pictures.ts'
import { markWords, speaksOf, type Glossary } from '../../../src/app/words/glossary.ts'

const root = path.resolve(import.meta.dirname, '../../..')
const read = <T>(file: string) => JSON.parse(readFileSync(path.join(root, file), 'utf8')) as T
const glossary = (language: string) => read<Glossary>(`shared/glossary.${language}.json`)
const messages = (language: string) =>
  new Map(
    readdirSync(path.join(root, 'src/app/words', language))
      .filter((name) => name.endsWith('.json'))
      .flatMap((name) => Object.entries(read<Record<string, string>>(`src/app/words/${language}/${name}`))),
  )
/** Without the names of what is put in. */
const bare = (text: string) => text.replaceAll(/\{\w+(?=[,}])/g, '')

const english = messages('en')
const terms = Object.entries(glossary('en'))
const LANGUAGES = ['en', 'fr', 'pt', 'sw', 'ha'] as const

describe.each(LANGUAGES)('the trade words in %s', (language) => {
  const own = glossary(language)
  const words = messages(language)

  it('are the same words, each explained by one short sentence or two, and found by its own pattern', () => {
    expect(Object.keys(own)).toEqual(terms.map(([key]) => key))
    const all = Object.values(own)
    expect(all.filter(({ term, means }) => term === '' || means.length < 15 || means.length > 110)).toEqual([])
    expect(all.filter(({ means }) => !/[.]$/.test(means))).toEqual([])
    // No groups but those that the finder makes, and nothing that Safari 15.4 cannot read.
    expect(all.filter(({ pattern = '' }) => /\((?!\?:)/.test(pattern))).toEqual([])
    expect(all.filter((one) => !speaksOf(one.term, one)).map(({ term }) => term)).toEqual([])
  })

  // A translator may turn a sentence so that one word falls away; of a hundred messages at least ninety keep it.
  it.each(terms)('%s is called by its word', (key, word) => {
    const speakOf = [...english].filter(([, text]) => speaksOf(bare(text), word)).map(([name]) => name)
    const theirs = own[key]
    const without = speakOf.filter((name) => theirs === undefined || !speaksOf(bare(words.get(name) ?? ''), theirs))
    expect(speakOf.length).toBeGreaterThan(2)
    expect(without.length > 0.1 * speakOf.length ? without : []).toEqual([])
  })

  it('mark few words of a message, none twice, and leave its text as it is', () => {
    for (const text of words.values()) {
      const stretches = markWords(text, own)
      expect(stretches.map((one) => one.text).join('')).toBe(text)
      const keys = stretches.flatMap(({ key }) => (key === undefined ? [] : [key]))
      expect(new Set(keys).size).toBe(keys.length)
      expect(keys.length).toBeLessThan(7)
    }
  })
})

it('every trade word has its picture, and stands in one group', () => {
  const drawn = Object.values(TERM_GROUPS).flatMap((group) => Object.keys(group))
  expect(drawn.toSorted()).toEqual(terms.map(([key]) => key).toSorted())
})

// By hand, from the sentence itself.
it('a word is marked where it first stands and not inside another', () => {
  const said = 'The lintels lie over the opening; a lintel of steel rusts. Meshwork is not mesh.'
  expect(markWords(said, glossary('en'))).toEqual([
    { text: 'The ' },
    { text: 'lintels', key: 'lintel' },
    { text: ' lie over the opening; a lintel of steel rusts. Meshwork is not ' },
    { text: 'mesh', key: 'mesh' },
    { text: '.' },
  ])
})
