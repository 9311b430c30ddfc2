import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { compileMessage } from '@lingui/message-utils/compileMessage'
import { afterEach, describe, expect, it } from 'vitest'
import { say } from '../../../src/app/words/catalogue.ts'
import { LANGUAGES, numberTag, speak, type Language } from '../../../src/app/words/language.ts'
import { setNumberLocale } from '../../../src/app/words/locale.ts'

const root = path.resolve(import.meta.dirname, '../../../src/app/words')
type Messages = Readonly<Record<string, string>>

const filesOf = (language: string) =>
  readdirSync(path.join(root, language))
    .filter((name) => name.endsWith('.json'))
    .sort()
const read = (language: string, file: string) =>
  JSON.parse(readFileSync(path.join(root, language, file), 'utf8')) as Messages

const OTHERS = (Object.keys(LANGUAGES) as Language[]).filter((language) => language !== 'en')

/** What is put into a message, each with how it is used: `mass`, `chambers, plural`. */
function argsOf(text: string): string[] {
  const found = new Set<string>()
  const look = (tokens: unknown): void => {
    if (!Array.isArray(tokens)) return
    for (const token of tokens as unknown[]) {
      if (!Array.isArray(token)) continue
      const [name, type, forms] = token as [string, string | undefined, unknown]
      found.add(type === undefined ? name : `${name}, ${type}`)
      if (typeof forms === 'object' && forms !== null) for (const form of Object.values(forms)) look(form)
    }
  }
  look(compileMessage(text))
  return [...found].sort()
}

/** The forms that a message gives for its numbers, message by message. */
function pluralForms(text: string): string[][] {
  const found: string[][] = []
  const look = (tokens: unknown): void => {
    if (!Array.isArray(tokens)) return
    for (const token of tokens as unknown[]) {
      if (!Array.isArray(token)) continue
      const [, type, forms] = token as [string, string | undefined, unknown]
      if (typeof forms !== 'object' || forms === null) continue
      if (type === 'plural') found.push(Object.keys(forms))
      for (const form of Object.values(forms)) look(form)
    }
  }
  look(compileMessage(text))
  return found
}

/**
 * Forms that these languages bend by: Unicode CLDR 46, "Language Plural Rules", cardinals. French and Portuguese have "many" besides, for
 * whole millions, which no count here reaches; such a number falls to "other".
 */
const FORMS: Readonly<Record<Language, readonly string[]>> = {
  en: ['one', 'other'],
  fr: ['one', 'other'],
  pt: ['one', 'other'],
  sw: ['one', 'other'],
  ha: ['one', 'other'],
}

describe.each(OTHERS)('the words in %s', (language) => {
  it('are in the same files, message for message', () => {
    expect(filesOf(language)).toEqual(filesOf('en'))
    for (const file of filesOf('en'))
      expect([file, Object.keys(read(language, file)).sort()]).toEqual([file, Object.keys(read('en', file)).sort()])
  })

  it('put in what the English puts in, in the same way', () => {
    const wrong = filesOf(language).flatMap((file) => {
      const english = read('en', file)
      return Object.entries(read(language, file)).flatMap(([key, text]) => {
        const [own, theirs] = [argsOf(text), argsOf(english[key] ?? '')]
        // A language may say by a form of its own what English says by a plain number, and the other way round.
        const bare = (args: readonly string[]) => [...new Set(args.map((arg) => arg.replace(/, plural$/, '')))].sort()
        return JSON.stringify(bare(own)) === JSON.stringify(bare(theirs)) ? [] : [`${key}: ${text}`]
      })
    })
    expect(wrong).toEqual([])
  })

  it('bend by the forms of the language', () => {
    const wrong = filesOf(language).flatMap((file) =>
      Object.entries(read(language, file)).flatMap(([key, text]) =>
        pluralForms(text).flatMap((forms) => {
          const plain = forms.filter((form) => !/^(=?\d+|offset)$/.test(form))
          const isWhole = plain.includes('other') && plain.every((form) => FORMS[language].includes(form))
          const hasOne = plain.includes('one') || forms.some((form) => /^=?[012]$/.test(form))
          return isWhole && hasOne ? [] : [`${key}: ${forms.join(' ')}`]
        }),
      ),
    )
    expect(wrong).toEqual([])
  })

  it('leave nothing empty, and no two spaces together', () => {
    const wrong = filesOf(language).flatMap((file) =>
      Object.entries(read(language, file)).flatMap(([key, text]) =>
        text.trim() === '' || /[^\S\u00a0]{2}/.test(text) ? [key] : [],
      ),
    )
    expect(wrong).toEqual([])
  })
})

describe('a change of language', () => {
  afterEach(async () => {
    await speak('en')
    setNumberLocale('en')
  })

  it('changes words, numbers and what the page says of itself, and back', async () => {
    await speak('fr')
    expect(say('app.close')).toBe(read('fr', 'app.json')['app.close'])
    expect(document.documentElement.lang).toBe('fr')
    await speak('en')
    expect(say('app.close')).toBe('Close')
    expect(document.documentElement.lang).toBe('en')
  })

  // BCP 47 (RFC 5646): language, then region in capitals.
  it.each([
    ['fr', ['fr-SN', 'en'], 'fr-SN'],
    ['fr', ['en-GH'], 'fr-GH'],
    ['sw', ['sw'], 'sw'],
    ['ha', ['en', 'ha-NG'], 'ha-NG'],
    ['en', ['de-DE'], 'de-DE'],
    ['en', ['fr-SN'], 'en-SN'],
    ['pt', ['en'], 'pt'],
  ] as const)('writes numbers beside %s on a phone in %j as %s', (words, tags, tag) => {
    expect(numberTag(words, tags)).toBe(tag)
  })
})
