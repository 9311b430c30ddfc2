import { readFileSync, readdirSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { parsePlan } from '../../../src/core/plan/parse-plan.ts'
import { MIGRATIONS } from '../../../src/core/plan/migrations.ts'
import { PLAN_VERSION } from '../../../src/core/plan/schema.ts'

const folder = path.join(import.meta.dirname, 'versions')
const files = readdirSync(folder).filter((file) => file.endsWith('.json'))
const read = (file: string) => JSON.parse(readFileSync(path.join(folder, file), 'utf8')) as Record<string, unknown>

/** Plans as each earlier version of the app wrote them: never edited, one set added with each version. */
describe('plans of every version that was ever shipped', () => {
  it('has one of each earlier version', () => {
    const versions = new Set(files.map((file) => Number(file.split('-')[0])))
    expect([...versions].sort((a, b) => a - b)).toEqual(
      Array.from({ length: PLAN_VERSION - 1 }, (_, before) => before + 1),
    )
    expect(MIGRATIONS).toHaveLength(PLAN_VERSION - 1)
  })

  it.each(files)('opens %s with everything that was decided in it', (file) => {
    const old = read(file)
    const opened = parsePlan(old)
    expect(opened.ok ? opened.value : opened.problems).toMatchObject({ ...old, version: PLAN_VERSION })
  })

  it('leaves a damaged old plan to the door, which names the field', () => {
    const opened = parsePlan({ ...read(files[0] ?? ''), trays: 7 })
    expect(
      opened.ok ? [] : opened.problems.map((problem) => (problem.kind === 'damaged' ? problem.field : '')),
    ).toContain('trays')
  })
})
