import { hasWord } from '../../words/catalogue.ts'
import { showIsoDay } from '../../words/dates.ts'
import type { Words } from '../../words/words.ts'

/** Collections of the plan, the longer paths first. */
const RECORDS = [
  'trays.owned',
  'run.firings',
  'run.upkeep',
  'build.ticks',
  'built.laid',
  'built.risen',
  'built.broken',
  'built.tapes',
  'built.levels',
  'spending',
  'members',
  'contributions',
  'payouts',
  'offers',
]

/** A path of the plan in words: a decision, or an entry of a collection and what of it. `entryOf` gives the entry as it is. */
export function decisionName(path: string, entryOf: (path: string) => unknown, words: Words): string {
  const { say, named } = words
  for (const key of [`field.${path}`, `decision.${path}`]) if (hasWord(key)) return named(key)
  const record = RECORDS.find((one) => path.startsWith(`${one}.`))
  if (record === undefined) return named(`decision.${path}`)
  const [id = '', field] = path.slice(record.length + 1).split('.')
  const kind = named(`decision.${record}`)
  const entry = entryName(id, entryOf(`${record}.${id}`), words)
  return field === undefined
    ? say('decision.entry', { kind, entry })
    : say('decision.entry-field', { kind, entry, field: named(`decision.field.${field}`) })
}

/** What an entry is known by: its thing, its name, its day, or its own mark on the site. */
function entryName(id: string, entry: unknown, { say, named }: Words): string {
  const { item, name, day } = (typeof entry === 'object' && entry !== null ? entry : {}) as Record<string, unknown>
  if (typeof item === 'string') return named(`item.${item}`)
  if (typeof name === 'string' && name !== '') return name
  const course = /^c(\d+)$/.exec(id)
  if (course?.[1] !== undefined) return say('decision.course', { number: course[1] })
  if (hasWord(`task.${id}`)) return named(`task.${id}`)
  return typeof day === 'string' ? showIsoDay(day) : id
}
