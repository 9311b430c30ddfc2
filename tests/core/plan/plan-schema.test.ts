import { readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import * as z from 'zod/mini'
import { priceBookSchema } from '../../../src/core/plan/price-book.ts'
import { planSchema } from '../../../src/core/plan/schema.ts'

const shared = path.resolve(import.meta.dirname, '../../../shared')

describe('the JSON Schema that outside readers use', () => {
  // `npx vitest run -u tests/core/plan/plan-schema.test.ts` writes them anew after a change of the plan.
  it('says what the app checks a plan by', async () => {
    await expect(`${JSON.stringify(z.toJSONSchema(planSchema), null, 2)}\n`).toMatchFileSnapshot(
      path.join(shared, 'plan.schema.json'),
    )
  })

  it('says what the app checks a price book by', async () => {
    await expect(`${JSON.stringify(z.toJSONSchema(priceBookSchema), null, 2)}\n`).toMatchFileSnapshot(
      path.join(shared, 'prices.schema.json'),
    )
  })

  it('refuses fields that nobody knows', () => {
    const schema = JSON.parse(readFileSync(path.join(shared, 'plan.schema.json'), 'utf8')) as Record<string, unknown>
    expect(schema['additionalProperties']).toBe(false)
  })
})
