import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { UNITS } from '../../src/core/basics/unit.ts'
import { SOURCES, type SourceId } from '../../src/core/sources/sources.ts'
import words from '../../src/app/words/en/trust.json' with { type: 'json' }
import { checks } from '../../shared/checks.json' with { type: 'json' }
import { FISH_AND_HEAT } from './registered/fish-and-heat.ts'
import { GROUND_AND_WALLS } from './registered/ground-and-walls.ts'
import { MATERIALS } from './registered/materials.ts'
import type { Worked } from './registered/worked.ts'

const WORKED: Worked = { ...GROUND_AND_WALLS, ...MATERIALS, ...FISH_AND_HEAT }

// Every expected value, its tolerance, the reason for the tolerance and the source stand in shared/checks.json, which the app shows too.
describe('the register of checks', () => {
  it.each(checks.map((check) => [check.id, check] as const))('%s', (id, { expected, within }) => {
    const found = WORKED[id]?.()
    expect(found).toBeTypeOf('number')
    expect(Math.abs((found ?? Number.NaN) - expected)).toBeLessThanOrEqual(within)
  })

  it('works out nothing that is not registered, and nothing twice', () => {
    const ids = checks.map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
    expect(Object.keys(WORKED).sort()).toEqual([...ids].sort())
  })

  it('names a known source and unit for each, and a tolerance far smaller than the figure', () => {
    for (const { id, source, unit, expected, within } of checks) {
      expect([id, Object.hasOwn(SOURCES, source), Object.hasOwn(UNITS, unit)]).toEqual([id, true, true])
      expect(within).toBeLessThan(0.1 * Math.abs(expected))
    }
  })

  // `npx vitest run -u --project core tests/reference/register.test.ts` writes the table anew after a change of the register.
  it('is the table that the guide for contributors points to', async () => {
    const said: Readonly<Record<string, string>> = words
    const rows = checks.map(({ id, expected, unit, within, why, source }) => {
      const { author, title, year, place } = SOURCES[source as SourceId] as Titled
      const cited = [author, title, year, place].filter((part) => part !== undefined).join(', ')
      const near = why === 'exact' ? '' : `± ${String(within)}`
      const cells = [
        said[`check.${id}`],
        `${String(expected)} ${unit}`,
        near,
        said[`trust.why.${why}`],
        cited || source,
      ]
      return `| ${cells.join(' | ')} |`
    })
    const head = [
      '# What the numbers are checked against',
      '',
      'Written by `tests/reference/register.test.ts` from `shared/checks.json`.',
      '',
    ]
    const table = [
      '| figure | expected (SI) | tolerance | why | source |',
      '| --- | --- | --- | --- | --- |',
      ...rows,
      '',
    ]
    await expect([...head, ...table].join('\n')).toMatchFileSnapshot(path.join(import.meta.dirname, 'checks.md'))
  })
})

interface Titled {
  readonly author?: string
  readonly title?: string
  readonly year?: number
  readonly place?: string
}
