import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import project from '../../package.json' with { type: 'json' }

const root = path.resolve(import.meta.dirname, '../..')
const textOf = (file: string): string => readFileSync(path.join(root, file), 'utf8')

/** Written by a command on the machine it is run on, and not kept. */
const WRITTEN = 'tests/bench/figures.md'
const TOP = /^(src|tests|shared|public|\.ci|screens|app|basics|words)\//
/** Where the guide leaves out the beginning of a path. */
const BELOW: Readonly<Record<string, string>> = {
  screens: 'src/app/screens',
  words: 'src/app/words',
  app: 'src/app',
  basics: 'src/core/basics',
}

/** Is a path of the guides a file or folder that is there? A * or … stands for any part of a name, <language> for any name. */
function isThere(named: string): boolean {
  const parts = named
    .replace(/^\w+(?=\/)/, (top) => BELOW[top] ?? top)
    .split('/')
    .filter((part) => part !== '')
  let open = [root]
  for (const part of parts) {
    const asked = part.replaceAll(/<\w+>|…/g, '*')
    const fits = new RegExp(`^${asked.replaceAll('.', '\\.').replaceAll('*', '.*')}$`)
    open = open.flatMap((folder) =>
      asked.includes('*')
        ? (statSync(folder).isDirectory() ? readdirSync(folder) : [])
            .filter((name) => fits.test(name))
            .map((name) => path.join(folder, name))
        : [path.join(folder, part)].filter((one) => existsSync(one)),
    )
  }
  return open.length > 0
}

/** Commands of npm in a text that package.json does not have. */
function unknownCommands(text: string): string[] {
  const known = new Set([...Object.keys(project.scripts), 'install', 'ci', 'run'])
  return [...text.matchAll(/\bnpm (?:run )?([a-z\d:-]+)/g)]
    .map(([, name]) => name ?? '')
    .filter((one) => !known.has(one))
}

/** Files and folders that the tree in a guide names, by their indents, as paths from the top. */
function treeOf(text: string): string[] {
  const [, tree = ''] = /```\n(src\/\n[^`]+)```/.exec(text) ?? []
  const above: { indent: number; name: string }[] = []
  return tree.split('\n').flatMap((line) => {
    const [, space = '', name] = /^( {0,4})([\w.-]+\/?)(?: {2,}|$)/.exec(line) ?? []
    if (name === undefined) return []
    while ((above.at(-1)?.indent ?? -1) >= space.length) above.pop()
    above.push({ indent: space.length, name })
    return [above.map((one) => one.name).join('')]
  })
}

const guides = ['DEVELOPERS.md', 'README.md'].map((name) => [name, textOf(name)] as const)

describe.each(guides)('%s', (_, text) => {
  it('points only at files and folders that are there', () => {
    const named = [...text.matchAll(/`([^`\s]+)`|\]\(([^)\s]+)\)/g)].map(([, code, link]) => code ?? link ?? '')
    const paths = named.filter((one) => TOP.test(one) && one !== WRITTEN)
    expect(paths.length).toBeGreaterThan(0)
    expect(paths.filter((one) => !isThere(one))).toEqual([])
  })

  it('names only commands that package.json has', () => {
    expect(unknownCommands(text)).toEqual([])
  })

  it('names only settings of the environment that some code reads', () => {
    const code = ['.ci', 'tests', 'src']
      .flatMap((folder) =>
        readdirSync(path.join(root, folder), { recursive: true, encoding: 'utf8' }).map((name) => `${folder}/${name}`),
      )
      .filter((name) => /\.(ts|mjs)$/.test(name))
      .map(textOf)
      .join('\n')
    const settings = [...text.matchAll(/`([A-Z][A-Z_]+)`|\b([A-Z][A-Z_]+)=\S/g)].map(
      ([, one, other]) => one ?? other ?? '',
    )
    expect(settings.filter((name) => !new RegExp(`env\\b.{0,200}\\b${name}\\b`).test(code))).toEqual([])
  })
})

describe('the guide of the rooms', () => {
  const text = textOf('DEVELOPERS.md')

  it('lists every room there is, and no other', () => {
    const tree = treeOf(text)
    expect(tree.filter((one) => !isThere(one))).toEqual([])
    for (const floor of ['src', 'src/core', 'src/app', 'src/device']) {
      const rooms = readdirSync(path.join(root, floor), { withFileTypes: true }).filter((one) => one.isDirectory())
      expect(rooms.map(({ name }) => `${floor}/${name}/`).filter((one) => !tree.includes(one))).toEqual([])
    }
  })

  it('and the front page list every command there is', () => {
    const told = guides.map(([, guide]) => guide).join('\n')
    const untold = Object.keys(project.scripts).filter(
      (name) => !new RegExp(`npm (run )?${name}(?![\\w:-])`).test(told),
    )
    expect(untold).toEqual([])
  })
})

describe('the check of the guides', () => {
  it('finds a file, a command and a folder that are not there', () => {
    expect(isThere('src/core/no-such-room/')).toBe(false)
    expect(isThere('screens/no-such-screen/')).toBe(false)
    expect(isThere('src/app/words/*/no-such.json')).toBe(false)
    expect(isThere('src/app/words/<language>/index.ts')).toBe(true)
    expect(unknownCommands('npm run no-such, npm run format:check, npm test')).toEqual(['no-such'])
    expect(treeOf('```\nsrc/\n  core/   a\n    basics/  b\n  main.tsx  c\n```')).toEqual([
      'src/',
      'src/core/',
      'src/core/basics/',
      'src/main.tsx',
    ])
  })
})
