import { LIMITS, type LimitedField } from '../../../core/plan/limits.ts'
import { fieldWay } from '../fields/field-way.ts'
import { hasWord } from '../../words/catalogue.ts'
import { showIsoDay } from '../../words/dates.ts'
import { inLine } from '../../words/show.ts'
import type { Words } from '../../words/words.ts'

/** Fields of a few answers each, and what their words begin with. */
const CHOICES: Readonly<Record<string, string>> = {
  'show.length': 'length',
  'show.mass': 'mass',
  'catch.form': 'form',
  'catch.loading': 'loading',
  'walls.leaf': 'leaf',
  'walls.bond': 'bond',
  'walls.fill': 'fill',
  'openings.head': 'head',
  'ground.soil': 'soil',
  'ground.footing': 'footing',
  'ground.tests.ground': 'soil-answer.ground',
  'ground.tests.handful': 'soil-answer.handful',
  'ground.tests.thumb': 'soil-answer.thumb',
  'ground.formation': 'formation',
  'ground.rain': 'rain',
  'trays.corner': 'corner',
  'trays.cover': 'cover',
  'place.facing': 'facing',
  'place.shelter': 'shelter',
  item: 'item',
  seller: 'seller',
}
/** As many parts of an entry as fit a line. */
const MOST_PARTS = 4

type Entry = Readonly<Record<string, unknown>>
const isEntry = (value: unknown): value is Entry => typeof value === 'object' && value !== null && !Array.isArray(value)
const numberIn = (entry: Entry, key: string): number => (typeof entry[key] === 'number' ? entry[key] : 0)

/** An answer to a decision, in the reader's words and units. Undefined: what was there was taken away. */
export function answerText(path: string, value: unknown, words: Words): string {
  const { say } = words
  if (value === undefined) return say('decision.taken-away')
  if (path === 'walls.coursing' && value === null) return say('decision.best-courses')
  if (value === null || value === '') return say(path === 'walls.laying' ? 'decision.none' : 'decision.not-known')
  if (typeof value === 'boolean') return say(value ? 'decision.yes' : 'decision.no')
  if (typeof value === 'number') return numberText(path, value, words)
  if (path.endsWith('.receipt')) return say('decision.yes')
  if (typeof value === 'string') return wordText(path, value, words)
  if (Array.isArray(value)) return listText(path, value, words)
  return isEntry(value) ? wholeText(path, value, words) : ''
}

function numberText(path: string, value: number, words: Words): string {
  const field = path.slice(path.lastIndexOf('.') + 1)
  if (field.endsWith('Minor')) return words.money(value)
  if (isLimited(path) || /^(mixes|place)\./.test(path)) return inLine(fieldWay(path, words).show(value))
  if (field.endsWith('M3')) return words.inLine(value, 'm3')
  if (field.endsWith('M') || /^built\.(tapes|levels)\./.test(path)) return words.length(value)
  if (field.endsWith('Kg')) return words.mass(value)
  return words.number(value, 2)
}

const isLimited = (path: string): path is LimitedField => path in LIMITS

function wordText(path: string, value: string, { named }: Words): string {
  if (/^\d{4}-\d\d-\d\d$/.test(value)) return showIsoDay(value)
  const field = path.slice(path.lastIndexOf('.') + 1)
  const stem = CHOICES[path] ?? CHOICES[field]
  return stem !== undefined && hasWord(`${stem}.${value}`) ? named(`${stem}.${value}`) : value
}

function listText(path: string, values: readonly unknown[], words: Words): string {
  if (values.length === 0) return words.say('decision.none')
  if (path === 'walls.samples') return words.say('decision.count', { count: values.length })
  if (path === 'build.restWeekdays') return values.map((day) => weekday(Number(day))).join(', ')
  return values.map((value) => answerText(path, value, words)).join(', ')
}

/** A day of the week by its number, 0 = Sunday: 4 January 1970 was one. */
const weekday = (number: number): string =>
  new Intl.DateTimeFormat(undefined, { weekday: 'long', timeZone: 'UTC' }).format(
    new Date(Date.UTC(1970, 0, 4 + number)),
  )

function wholeText(path: string, value: Entry, words: Words): string {
  const { say, named, sizes, length } = words
  if (path === 'walls.unit')
    return `${named(`family.${String(value['family'])}`)}, ${sizes(numberIn(value, 'lengthM'), numberIn(value, 'widthM'), numberIn(value, 'heightM'))}`
  if (path === 'walls.joint') return length(numberIn(value, 'usualM'))
  if (path === 'walls.laying') return say('decision.laying-found')
  if (path === 'walls.coursing')
    return say('decision.courses', {
      below: numberIn(value, 'below'),
      above: numberIn(value, 'above'),
      joint: length(numberIn(value, 'jointM')),
    })
  if (path === 'currency') return String(value['code'])
  if (path.startsWith('mixes.')) {
    const parts = ['cement', 'clay', 'sand', 'stone'].filter((part) => part in value)
    return say('decision.ratio', { parts: parts.map((part) => words.number(numberIn(value, part), 2)).join(' : ') })
  }
  return Object.entries(value)
    .filter(([, part]) => part !== null && part !== '' && !isEntry(part))
    .slice(0, MOST_PARTS)
    .map(([field, part]) => answerText(`${path}.${field}`, part, words))
    .join(', ')
}
