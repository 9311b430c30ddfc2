import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { CURRENCY_CODES, currencyOf } from '../../../src/app/words/currencies.ts'
import { showDay } from '../../../src/app/words/dates.ts'
import { setNumberLocale, showNumber } from '../../../src/app/words/locale.ts'
import { moneyText } from '../../../src/app/words/money.ts'
import { inFace } from '../../../src/device/paper/pdf-page.ts'
import { readFace } from '../../../src/device/paper/true-type.ts'

const root = path.resolve(import.meta.dirname, '../../..')
const face = (name: string) =>
  readFace(new Uint8Array(readFileSync(path.join(root, `src/device/paper/fonts/noto-sans-${name}.ttf`))))

const messagesOf = (language: string): string[] => {
  const folder = path.join(root, 'src/app/words', language)
  return readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .flatMap((name) =>
      Object.values(JSON.parse(readFileSync(path.join(folder, name), 'utf8')) as Record<string, string>),
    )
}

/** Letters of a language as they may come on paper: its messages, and what Intl writes for money, numbers and months. */
function lettersOf(language: string): Set<string> {
  setNumberLocale(language)
  const months = Array.from({ length: 12 }, (_, month) => showDay(Date.UTC(2026, month, 15)))
  const money = CURRENCY_CODES.map((code) => moneyText(-1_234_567, currencyOf(code)))
  const written = [...messagesOf(language), ...months, ...money, showNumber(-1_234_567.89, 2)]
  return new Set(written.flatMap((text) => Array.from(inFace(text))))
}

afterAll(() => {
  setNumberLocale('en')
})

describe.each(['regular', 'bold'])('the paper’s %s face', (weight) => {
  const { glyphOf } = face(weight)
  it.each(['en', 'fr', 'pt', 'sw', 'ha'])('has every letter of %s', (language) => {
    const letters = lettersOf(language)
    expect(letters.size).toBeGreaterThan(60)
    expect([...letters].filter((letter) => letter !== '\n' && glyphOf(letter.codePointAt(0) ?? 0) === 0)).toEqual([])
  })

  // Letters of names of people and places beyond our five languages: Ewe, Twi, Fula, Wolof, Bambara, as the Africa Alphabet (1930) has them.
  it('has the letters of names nearby, and says so of those that it lacks', () => {
    expect(
      Array.from('ɛɔŋɓɗƙƴɖƒɣɲʋĩũáàâãäǎéèêëẽíìîïóòôõöúùûüçñẹọṣ').filter(
        (letter) => glyphOf(letter.codePointAt(0) ?? 0) === 0,
      ),
    ).toEqual([])
    expect(glyphOf('漢'.codePointAt(0) ?? 0)).toBe(0)
  })
})
