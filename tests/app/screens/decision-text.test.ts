import { readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { planSchema, type Plan } from '../../../src/core/plan/schema.ts'
import { parsePlan } from '../../../src/core/plan/parse-plan.ts'
import { answerText } from '../../../src/app/screens/differences/answer-text.ts'
import { decisionName } from '../../../src/app/screens/differences/decision-name.ts'
import { valueAt } from '../../../src/app/screens/fields/value-at.ts'
import '../../../src/app/words/add-plan-words.ts'
import { wordsFor } from '../../../src/app/words/words.ts'
import { PLAN_SHAPE } from '../../../src/device/database/plan-shape.ts'

const parsed = parsePlan(
  JSON.parse(readFileSync(path.join(import.meta.dirname, '../../../shared/examples/two-chambers.json'), 'utf8')),
)
if (!parsed.ok) throw new Error('no example')
const plan: Plan = parsed.value
const words = wordsFor({ ...plan.show, currency: plan.currency })
const none = () => undefined

/** Never shown as a decision: what the file is, and which plan. */
const NO_DECISIONS = new Set(['format', 'version', 'id'])
const decisions = PLAN_SHAPE.leaves.filter((leaf) => !NO_DECISIONS.has(leaf))

/** The names of an entry's fields, read from the schema. */
function entryFields(record: string): string[] {
  let schema: unknown = planSchema
  for (const key of record.split('.')) schema = (schema as { shape: Record<string, unknown> }).shape[key]
  const { valueType } = (schema as { def: { valueType: { shape: object } } }).def
  return Object.keys(valueType.shape)
}

describe('what changed, in plain words', () => {
  it('has a name of its own for every decision of a plan', () => {
    const names = decisions.map((leaf) => decisionName(leaf, none, words))
    // A name read off a path keeps its humps: walls.aboveM.
    expect(names.filter((name) => /[a-z][A-Z]|\./.test(name))).toEqual([])
    expect(decisions.length).toBeGreaterThan(80)
  })

  it('has a name for each field of an entry that changes field by field', () => {
    const fields = PLAN_SHAPE.records
      .filter(({ isByField }) => isByField)
      .flatMap(({ path: record }) =>
        entryFields(record).map((field) => decisionName(`${record}.e1.${field}`, none, words)),
      )
    expect(fields.length).toBeGreaterThan(30)
    expect(fields.filter((name) => /[a-z][A-Z]/.test(name))).toEqual([])
  })

  it('says every answer of an example without a path, a bracket or a long fraction', () => {
    const said = decisions.map((leaf) => answerText(leaf, valueAt(plan, leaf), words))
    expect(said.filter((text) => text === '' || /[{}[\]]|\d\.\d{4}|[a-z]-[a-z]+-/.test(text))).toEqual([])
  })

  it('speaks of things, people and days rather than of their marks', () => {
    const entry = { item: 'cement', paidMinor: 125_000, day: '2026-05-12' }
    expect(decisionName('spending.x7f', () => entry, words)).toBe('Purchase: Cement')
    expect(decisionName('spending.x7f.paidMinor', () => entry, words)).toBe('Purchase: Cement, paid')
    expect(decisionName('built.laid.c3', none, words)).toBe('Laid: course 3')
    expect(answerText('ground.soil', 'laterite', words)).toBe('Laterite')
    expect(answerText('chambers.count', 3, words)).toBe('3')
    expect(answerText('build.restWeekdays', [0, 5], words)).toMatch(/Sunday.*Friday/)
    expect(answerText('spending.x7f', undefined, words)).toBe('taken away')
  })
})
