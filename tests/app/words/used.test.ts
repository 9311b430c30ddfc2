import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'

const root = path.resolve(import.meta.dirname, '../../..')
const filesIn = (folder: string, ends: RegExp): string[] =>
  readdirSync(path.join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => ends.test(name))
    .map((name) => path.join(root, folder, name))
const textOf = (files: readonly string[]) => files.map((file) => readFileSync(file, 'utf8')).join('\n')

const code = textOf(filesIn('src', /\.tsx?$/))
const dataFiles = filesIn('shared', /^(?!glossary|plan\.schema|prices\.schema).*\.json$/)
const found = (text: string, pattern: RegExp) => [...text.matchAll(pattern)].map(([, inner = '']) => inner)

const keys = readdirSync(path.join(root, 'src/app/words/en'))
  .filter((name) => name.endsWith('.json'))
  .flatMap((name) =>
    Object.keys(JSON.parse(readFileSync(path.join(root, 'src/app/words/en', name), 'utf8')) as Record<string, string>),
  )

/** Names that code or data hold as they are: strings, fields, names of example files. */
const written = new Set([
  ...found(code, /'([^'\n]*)'/g),
  ...found(code, /"([^"\n]*)"/g),
  ...found(code, /`([^`$\n]*)`/g),
  ...found(code, /^\s*(?:readonly )?(\w+)\??:/gm),
  ...found(textOf(dataFiles), /"([^"\n]*)"/g),
  ...dataFiles.map((file) => path.parse(file).name),
])

const quoted = (text: string) => text.replaceAll(/[.*+?^$()|[\]\\{}]/g, String.raw`\$&`)
/** A template as a pattern, a group for each gap. */
const asPattern = (template: string) =>
  new RegExp(
    `^${template
      .split(/\$\{[^{}]*\}/)
      .map(quoted)
      .join('(.+)')}$`,
  )

/** Names built in code, as `finding.${kind}` is, and parts of such names, as `wind-behind-${time}` is. */
const templates = [
  ...new Set([
    ...found(code, /`((?:[\w.-]|\$\{[^{}`]*\})*\$\{[^{}`]*\}[\w.-]*)`/g),
    ...found(code, /`([a-z][\w-]*\.[\w.-]*\$\{[^{}`]*\})/g),
    ...found(code, /\bnames="([\w.-]+)"/g).map((stem) => `${stem}.\${key}`),
  ]),
].filter((template) => /[a-z]/.test(template.replaceAll(/\$\{[^{}]*\}/g, '')))
const patterns = templates.map(asPattern)
const parts = templates.filter((template) => !/^[a-z][\w-]*\./.test(template)).map(asPattern)

const isWritten = (part: string): boolean => written.has(part) || written.has(`${part}M`) || /^\d+$/.test(part)
const groupsOf = (name: string, pattern: RegExp) => pattern.exec(name)?.slice(1)

/** What fills a gap is written somewhere, or made of parts that are. */
const fills = (gap: string, depth = 2): boolean =>
  isWritten(gap) ||
  gap.split('.').every(isWritten) ||
  gap.split('-').every(isWritten) ||
  [...patterns, ...parts].some(
    (pattern) => depth > 0 && groupsOf(gap, pattern)?.every((part) => fills(part, depth - 1)) === true,
  )

const isUsed = (key: string): boolean =>
  written.has(key) ||
  patterns.some(
    (pattern) =>
      /^\^[a-z][\w-]*\\\./.test(pattern.source) && groupsOf(key, pattern)?.every((gap) => fills(gap)) === true,
  )

describe('every message', () => {
  it('is said somewhere: by its name, or by a name that code builds from parts it knows', () => {
    expect(keys.filter((key) => !isUsed(key))).toEqual([])
  })

  it('that code asks for by name is there', () => {
    const asked = found(code, /\b(?:say|named|sayNamed|nameOf)\(\s*'([^']+)'/g)
    expect(asked.length).toBeGreaterThan(500)
    const known = new Set(keys)
    expect([...new Set(asked)].filter((key) => !known.has(key))).toEqual([])
  })

  it('that code asks for by a built name is there for at least one part', () => {
    const asked = [...code.matchAll(/\b(?:say|named|sayNamed)\(\s*`([a-z][\w-]*\.[\w.-]*)\$\{[^`{}]*\}([\w.-]*)`/g)]
    expect(asked.length).toBeGreaterThan(60)
    const lost = asked.filter(
      ([, head = '', tail = '']) => !keys.some((key) => key.startsWith(head) && key.endsWith(tail)),
    )
    expect(lost.map(([all]) => all)).toEqual([])
  })
})
