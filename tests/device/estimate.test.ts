import { execFile } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import os from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { handFor } from '../app/screens/sheet-hand.tsx'
import { resultData } from '../../src/app/screens/sheets/result-data.ts'

const example = 'shared/examples/one-chamber.json'
let folder: string

beforeAll(() => {
  folder = mkdtempSync(path.join(os.tmpdir(), 'estimate-'))
})
afterAll(() => {
  rmSync(folder, { recursive: true })
})

const put = (name: string, text: string): string => {
  const file = path.join(folder, name)
  writeFileSync(file, text)
  return file
}

/** The command as an office types it: what it says on both channels, and with which code it leaves. */
const estimate = (...words: readonly string[]) =>
  new Promise<{ code: number; out: string; errors: string[] }>((resolve) => {
    execFile(process.execPath, ['.ci/estimate.mjs', ...words], { maxBuffer: 2 ** 26 }, (failed, out, errors) => {
      const code = failed === null ? 0 : typeof failed.code === 'number' ? failed.code : -1
      resolve({ code, out, errors: errors.split('\n').filter((line) => line !== '') })
    })
  })

describe('the command line of an office', { timeout: 60_000 }, () => {
  it('tells each bad file apart, works out the good one, and leaves with 3', async () => {
    const plan = JSON.parse(readFileSync(example, 'utf8')) as Record<string, unknown>
    const files = [
      path.join(folder, 'gone.json'),
      put('words.json', 'this is no plan'),
      put('other.json', '{"format":"something else"}'),
      put('newer.json', JSON.stringify({ ...plan, version: 99 })),
      put('damaged.json', JSON.stringify({ ...plan, chambers: { count: 99, clearSideM: 0.7 } })),
      put('huge.json', ' '.repeat(5_000_001)),
    ]
    const { code, out, errors } = await estimate(...files, example)
    expect(code).toBe(3)
    expect(errors.map((line) => line.slice(line.indexOf(': ') + 2).replace(/ENOENT.*/, 'ENOENT'))).toEqual([
      'cannot be read: ENOENT',
      'not a plan: no JSON',
      'not a plan that this version can use: it holds no kiln plan',
      expect.stringMatching(/it is of plan version 99, and this one reads up to \d+$/),
      'not a plan that this version can use: chambers.count (too_big)',
      'cannot be read: larger than 5000000 bytes',
    ])
    expect(out).toContain(String(plan['name']))
  })

  it('gives the numbers of the app as data', async () => {
    const { code, out, errors } = await estimate(example, '--json')
    expect([code, errors]).toEqual([0, []])
    expect(JSON.parse(out)).toEqual(JSON.parse(JSON.stringify(resultData(handFor('one-chamber').worked))))
  })

  it('leaves with 1 for words it does not know, with 2 where it cannot write', async () => {
    for (const words of [[], [example, '--xml'], [example, '--json', '--csv'], [example, '--pdf'], [example, '--a5']]) {
      const { code, errors } = await estimate(...words)
      expect([words, code, errors[0]?.startsWith('Usage:')]).toEqual([words, 1, true])
    }
    const { code, errors } = await estimate(example, '--pdf', path.join(folder, 'no', 'such.pdf'))
    expect([code, errors.length, errors[0]?.includes('cannot be written')]).toEqual([2, 1, true])
  })
})
