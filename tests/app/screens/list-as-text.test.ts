import { beforeAll, describe, expect, it } from 'vitest'
import { listAsText, listAsTexts } from '../../../src/app/screens/buy/list-as-text.ts'
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

  it('splits between sellers where one message does not hold it, each part with its head, and loses no line', () => {
    const plan = planOf()
    const worked = workOut(plan)
    const words = wordsFor({ ...plan.show, currency: plan.currency })
    const whole = listAsText(worked, words, 0).split('\n')
    for (const most of [300, 400, 600]) {
      const parts = listAsTexts(worked, words, 0, most)
      expect(parts.length).toBeGreaterThan(1)
      for (const [index, part] of parts.entries()) {
        expect(part.length).toBeLessThanOrEqual(most)
        expect(part.split('\n')[0]).toBe(whole[0])
        expect(part.split('\n')[1]).toContain(`part ${String(index + 1)} of ${String(parts.length)}`)
        // No part begins with a thing whose seller stands in the part before.
        expect(part.split('\n')[3]).not.toMatch(/^- /)
      }
      const bodies = parts.flatMap((part) => part.split('\n').slice(2))
      const things = (lines: readonly string[]) => lines.filter((line) => /^- |^In all/.test(line))
      expect(things(bodies)).toEqual(things(whole))
    }
  })

  it('is one message of at most 4,000 signs for a usual kiln', () => {
    const plan = planOf()
    const words = wordsFor({ ...plan.show, currency: plan.currency })
    const texts = listAsTexts(workOut(plan), words, 0)
    expect(texts).toHaveLength(1)
    expect(texts[0]?.length).toBeLessThanOrEqual(4000)
  })
})
