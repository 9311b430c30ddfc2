import { beforeAll, describe, expect, it } from 'vitest'
import { listAsText } from '../../../src/app/screens/buy/list-as-text.ts'
import '../../../src/app/words/add-plan-words.ts'
import { setNumberLocale } from '../../../src/app/words/locale.ts'
import { wordsFor } from '../../../src/app/words/words.ts'
import { parsePlan } from '../../../src/core/plan/parse-plan.ts'
import type { Plan } from '../../../src/core/plan/schema.ts'
import { workOut } from '../../../src/core/work-out.ts'
import example from '../../../shared/examples/one-chamber.json' with { type: 'json' }

function planOf(): Plan {
  const read = parsePlan(example)
  if (!read.ok) throw new Error('the example is damaged')
  return read.value
}

beforeAll(() => setNumberLocale('en'))

describe('the list as a message', () => {
  it('has one line for every line of the list, a name for each seller, and the total', () => {
    const plan = planOf()
    const worked = workOut(plan)
    const text = listAsText(worked, wordsFor({ ...plan.show, currency: plan.currency }), Date.UTC(2026, 4, 12, 12))
    const lines = text.split('\n')
    expect(lines[0]).toBe(`${plan.name} (example)`)
    expect(lines[1]).toContain('2026')
    expect(lines.filter((line) => line.startsWith('- '))).toHaveLength(worked.purchase.lines.length)
    for (const { sellerName } of worked.list.groups) expect(text).toContain(sellerName)
    expect(lines.at(-1)).toMatch(/^In all: /)
    expect(text).not.toMatch(/\u00a0|undefined|NaN|null/)
  })

  it('says where nothing has a price, and that the total is what is priced so far', () => {
    const plan = { ...planOf(), offers: {} }
    const text = listAsText(workOut(plan), wordsFor({ ...plan.show, currency: plan.currency }), 0)
    expect(text).toContain('no price yet')
    expect(text).toContain('Priced so far: ')
  })
})
