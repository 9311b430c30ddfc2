import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { breaches, nameBreaches } from './architecture/laws.ts'

const root = path.resolve(import.meta.dirname, '..')

/** Files below a folder, as paths from the top of the repository. */
function filesBelow(folder: string): string[] {
  return readdirSync(path.join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(root, path.join(entry.parentPath, entry.name)).split(path.sep).join('/'))
}

/** What the laws say to one file that does not exist. */
const judge = (file: string, text: string) => breaches(new Map([[file, text]]))

describe('this repository', () => {
  it('keeps every law of src', () => {
    const files = filesBelow('src').filter((file) => !file.endsWith('.ttf'))
    expect(files.length).toBeGreaterThan(10)
    expect(breaches(new Map(files.map((file) => [file, readFileSync(path.join(root, file), 'utf8')])))).toEqual([])
  })

  it('has no drawer for odds and ends elsewhere', () => {
    expect([...filesBelow('tests'), ...filesBelow('.ci'), ...filesBelow('shared')].flatMap(nameBreaches)).toEqual([])
  })

  it('shows at the top level what belongs there, and nothing else', () => {
    const notKept = new Set(['node_modules', 'dist'])
    const shown = readdirSync(root).filter((name) => !notKept.has(name) && (!name.startsWith('.') || name === '.ci'))
    expect(shown.sort()).toEqual(
      [
        '.ci',
        'DEVELOPERS.md',
        'README.md',
        'package-lock.json',
        'package.json',
        'public',
        'shared',
        'src',
        'tests',
        'tsconfig.json',
        'vite.config.ts',
      ].sort(),
    )
  })
})

describe('the laws', () => {
  it.each([
    ['src/core/plan/a.ts', "import { z } from 'zod/mini'\nimport type { B } from '../basics/b.ts'"],
    ['src/core/basics/a.ts', "import type { SourceId } from '../sources/sources.ts'"],
    ['src/core/plan/a.ts', "import units from '../../../shared/units.json' with { type: 'json' }"],
    ['src/core/work-out.ts', "import { a } from './documents/a.ts'"],
    ['src/core/basics/count.ts', '/** Up to a whole. */\nexport const up = (n: number) => Math.ceil(n)'],
    ['src/core/heat/a.ts', '// Math.floor and new Date() in a comment\nexport const text = "Math.random() of Date"'],
    ['src/device/database/a.ts', "import { b } from '../sharing/b.ts'\nimport { openDB } from 'idb'"],
    [
      'src/app/state/a.ts',
      "import { b } from '../../device/database/b.ts'\nimport { createStore } from 'zustand/vanilla'",
    ],
    ['src/app/screens/Plan.tsx', "import { A } from '../parts/A.tsx'\nexport const P = () => <A />"],
    ['src/app/words/fr/index.ts', "import a from './a.json'\nexport const words = a"],
    ['src/app/parts/Button.module.css', 'button { color: red }'],
    ['src/main.tsx', "import { a } from './device/offline/register.ts'\nconst b = await import('./app/screens/B.tsx')"],
  ])('let %s do what it may', (file, text) => {
    expect(judge(file, text)).toEqual([])
  })

  it.each([
    ['a later room', 'src/core/plan/a.ts', "import { b } from '../geometry/b.ts'"],
    ['a later room, types only', 'src/core/geometry/a.ts', "import type { B } from '../layout/b.ts'"],
    ['a later room, passed on', 'src/core/basics/a.ts', "export * from '../plan/b.ts'"],
    ['a later room, on demand', 'src/device/paper/a.ts', "const b = await import('../../app/words/b.ts')"],
    ['a later room, in a type', 'src/core/heat/a.ts', "export type B = import('../costs/b.ts').B"],
    ['work-out from a stage', 'src/core/costs/a.ts', "import { workOut } from '../work-out.ts'"],
    ['the device from the core', 'src/core/documents/a.ts', "import { b } from '../../device/paper/b.ts'"],
    ['the whole of zod', 'src/core/plan/a.ts', "import { z } from 'zod'"],
    ['a package in the core', 'src/core/plan/a.ts', "import { Doc } from 'yjs'"],
    ['node in the core', 'src/core/plan/a.ts', "import { readFileSync } from 'node:fs'"],
    ['code from shared', 'src/core/plan/a.ts', "import { b } from '../../../shared/b.ts'"],
    ['something outside src', 'src/app/state/a.ts', "import p from '../../../package.json'"],
    ['React in the device', 'src/device/paper/a.ts', "import { useState } from 'react'"],
    ['the store in a part', 'src/app/parts/A.tsx', "import { useStore } from 'zustand'"],
    ['state in a part', 'src/app/parts/A.tsx', "import { plan } from '../state/plan.ts'"],
    ['state in a drawing', 'src/app/drawings/A.tsx', "import { plan } from '../state/plan.ts'"],
    ['the device in a screen', 'src/app/screens/A.tsx', "import { save } from '../../device/database/save.ts'"],
    ['the device in words', 'src/app/words/a.ts', "import { save } from '../../device/database/save.ts'"],
    ['a screen in a part', 'src/app/parts/A.tsx', "import { B } from '../screens/B.tsx'"],
    ['the worker in the page', 'src/device/offline/register.ts', "import { a } from './worker/a.ts'"],
    ['an unknown room', 'src/core/plan/a.ts', "import { b } from '../magic/b.ts'"],
    ['an import() of anything', 'src/app/state/a.ts', 'const b = (name: string) => import(name)'],
    ['rounding', 'src/core/layout/a.ts', 'export const n = Math.floor(1.5)'],
    ['rounding by another name', 'src/core/cutting/a.ts', 'const { ceil } = Math\nexport const n = ceil(1.5)'],
    ['rounding to text', 'src/core/costs/a.ts', 'export const n = (1.5).toFixed(1)'],
    ['a clock', 'src/core/schedule/a.ts', 'export const now = Date.now()'],
    ['a date as a type', 'src/core/schedule/a.ts', 'export interface Day { readonly at: Date }'],
    ['dice, even where counting is done', 'src/core/basics/count.ts', 'export const n = Math.random()'],
    ['a function without a word', 'src/core/heat/a.ts', 'export const flow = (areaM2: number) => areaM2 * 2'],
    ['a default export', 'src/app/state/a.ts', 'export default 1'],
    ['a file too long', 'src/app/parts/a.css', 'a {}\n'.repeat(301)],
    ['a barrel', 'src/core/plan/index.ts', 'export const a = 1'],
    ['a drawer', 'src/core/basics/utils.ts', 'export const a = 1'],
    ['a drawer as a folder', 'src/app/parts/common/a.ts', 'export const a = 1'],
    ['a file named like a component', 'src/core/plan/Plan.ts', 'export const a = 1'],
    ['a room that is not on the map', 'src/lib/a.ts', 'export const a = 1'],
    ['code that cannot be read', 'src/core/plan/a.ts', 'export const = 1'],
  ])('refuse %s', (_, file, text) => {
    expect(judge(file, text)).toHaveLength(1)
  })
})
