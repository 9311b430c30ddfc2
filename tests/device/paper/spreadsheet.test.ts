import fc from 'fast-check'
import readXlsx from 'read-excel-file/node'
import { describe, expect, it } from 'vitest'
import { spreadsheet, type Cell } from '../../../src/device/paper/spreadsheet.ts'

/** Rows as a spreadsheet library of general use reads them back. */
async function readBack(rows: readonly (readonly Cell[])[], name = 'list'): Promise<unknown> {
  const read: unknown = await readXlsx(Buffer.from(spreadsheet(name, rows)))
  const [first] = read as { data?: unknown[][] }[]
  return first?.data ?? read
}

describe('a spreadsheet', () => {
  it('keeps text as text, whatever it looks like, and numbers as numbers', async () => {
    const rows: Cell[][] = [
      ['Item', 'Money', 'Note'],
      ['=1+1', 12.5, 'a < b & "c" > d'],
      ['+cmd|x', -0.001, 'ɛ ɔ ŋ ɓ ɗ ƙ ã ç'],
      ['007', 123_456_789_012, 'two\nlines'],
    ]
    expect(await readBack(rows)).toEqual(rows)
  })

  it('counts columns past Z', async () => {
    const row = Array.from({ length: 60 }, (_, at) => `c${String(at)}`)
    expect(await readBack([row])).toEqual([row])
  })

  it('takes any name for its sheet and drops what no file may hold', async () => {
    expect(await readBack([['a\u0000b\uFFFF', 'x']], '[list]: a/b*?\\ and more than thirty-one letters')).toEqual([
      ['ab', 'x'],
    ])
    expect(await readBack([['a']], '')).toEqual([['a']])
  })

  it('gives back any table', async () => {
    const letter = fc.constantFrom('a', 'é', '<', '&', '"', '=', '9', 'ŋ')
    const word = fc.string({ minLength: 1, maxLength: 8, unit: letter })
    const cell = fc.oneof(
      word,
      fc.integer(),
      fc.integer({ min: -1e6, max: 1e6 }).map((n) => n / 64),
    )
    const table = fc.array(fc.array(cell, { minLength: 3, maxLength: 3 }), { minLength: 1, maxLength: 6 })
    await fc.assert(
      fc.asyncProperty(table, async (rows) => {
        expect(await readBack(rows)).toEqual(rows)
      }),
      { numRuns: 60 },
    )
  })
})
