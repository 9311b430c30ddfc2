import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { hasWord, say, sayNamed } from '../../../src/app/words/catalogue.ts'
import '../../../src/app/words/add-plan-words.ts'
import { LIMITS } from '../../../src/core/plan/limits.ts'
import { CATALOGUE_FORMS, CATALOGUE_SOILS, CATALOGUE_UNITS } from '../../../src/core/plan/catalogue.ts'
import { ITEM_KEYS, ITEMS } from '../../../src/core/quantities/items.ts'

const folder = path.resolve(import.meta.dirname, '../../../src/app/words/en')
const files = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .map((name) => ({
    name,
    messages: JSON.parse(readFileSync(path.join(folder, name), 'utf8')) as Record<string, string>,
  }))

describe('the catalogue', () => {
  it('holds every file of the folder, and no message that says two things', () => {
    const all = files.flatMap(({ messages }) => Object.entries(messages))
    const seen = new Map(all)
    expect(all.filter(([key, text]) => seen.get(key) !== text)).toEqual([])
    expect(all.map(([key]) => key).filter((key) => !hasWord(key))).toEqual([])
  })

  it('has words for everything the data name', () => {
    const keys = [
      ...CATALOGUE_UNITS.map(({ family }) => `family.${family}`),
      ...CATALOGUE_SOILS.flatMap(({ key }) => [`soil.${key}`, `soil-test.${key}`]),
      ...CATALOGUE_FORMS.map(({ key }) => `form.${key}`),
      ...ITEM_KEYS.flatMap((key) => [`item.${key}`, `seller.${ITEMS[key].seller}`, `lot.${ITEMS[key].lotName}`]),
    ]
    expect(keys.filter((key) => !hasWord(key))).toEqual([])
  })

  it('has a name for every field that a screen can show', () => {
    const elsewhere =
      /^(mixes\.(part|dryFactor)|place\.(windDeg|distanceM)|offer|spending|contribution|member|firingLog|owned)/
    const named = Object.keys(LIMITS).filter((field) => !elsewhere.test(field))
    expect(named.filter((field) => !hasWord(`field.${field}`))).toEqual([])
  })

  // English plural rules: Unicode CLDR, "one" for 1 and "other" for the rest.
  it('bends words by their number', () => {
    expect(say('front.answer', { chambers: 1, mass: '80 kg' })).toBe('One chamber, 80 kg a day')
    expect(say('front.answer', { chambers: 3, mass: '80 kg' })).toBe('3 chambers, 80 kg a day')
  })

  it('reads a name that it has no words for as plainly as it can', () => {
    expect(sayNamed('soil.blue-marl')).toBe('Blue marl')
  })
})
