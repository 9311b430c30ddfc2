import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import type { Plugin } from 'vite'
import { mutantsOf } from './mutants.ts'
import { withSwitches, type Numbered } from './switches.ts'

const root = path.resolve(import.meta.dirname, '../..')

/** A mutant in its file, as the report names it. */
export interface Placed extends Numbered {
  readonly file: string
  readonly line: number
  readonly before: string
}

/** The same numbers from the same seed everywhere (mulberry32). */
function drawing(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}

/** The mutants of a room of the core, and of them so many as were asked for, drawn from a seed. */
export function drawn(room: string, sample: number, seed: number): { all: number; mutants: readonly Placed[] } {
  const folder = path.join(root, 'src/core', room)
  const all = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .toSorted()
    .flatMap((name) => {
      const source = readFileSync(path.join(folder, name), 'utf8')
      return mutantsOf(source).map((mutant) => ({
        ...mutant,
        file: `src/core/${room}/${name.split(path.sep).join('/')}`,
        line: source.slice(0, mutant.start).split('\n').length,
        before: source.slice(mutant.start, mutant.end),
      }))
    })
    .map((mutant, id) => ({ ...mutant, id: id + 1 }))
  const next = drawing(seed)
  const shuffled = all.map((mutant) => ({ mutant, at: next() })).toSorted((a, b) => a.at - b.at)
  return { all: all.length, mutants: shuffled.slice(0, sample).map(({ mutant }) => mutant) }
}

/** Puts the drawn mutants into the files as they are loaded, and leaves the list for the report. */
export function mutating(room: string, sample: number, seed: number, listFile: string): Plugin {
  const { all, mutants } = drawn(room, sample, seed)
  writeFileSync(listFile, JSON.stringify({ all, mutants }))
  return {
    name: 'mutating',
    enforce: 'pre',
    transform(source, id) {
      const file = path
        .relative(root, id.split('?')[0] ?? id)
        .split(path.sep)
        .join('/')
      if (!file.startsWith('src/core/') || !file.endsWith('.ts')) return null
      const code = withSwitches(
        source,
        mutants.filter((mutant) => mutant.file === file),
      )
      return { code: code.replaceAll('new WeakMap', 'new __WeakMap'), map: null }
    },
  }
}
