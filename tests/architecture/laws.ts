import path from 'node:path'
import { parseSync, Visitor } from 'vite'
import { hasRoom, importBreach } from './order.ts'

const MOST_LINES = 300
const NO_NAMES = /^(utils?|helpers?|common|misc)(\.|$)/i
const COUNTING = 'src/core/basics/count.ts'
const ROUNDERS = new Set(['floor', 'ceil', 'round'])

/** Every breach of the laws of `src` in these files: path from the top of the repository, and text. */
export function breaches(files: ReadonlyMap<string, string>): string[] {
  return [...files].flatMap(([file, text]) => [
    ...nameBreaches(file),
    ...sizeBreaches(file, text),
    ...codeBreaches(file, text),
  ])
}

/** A file's name says what is inside: kebab-case nouns, PascalCase components, no drawer for odds and ends. */
export function nameBreaches(file: string): string[] {
  const name = path.posix.basename(file)
  const found: string[] = []
  if (file.split('/').some((part) => NO_NAMES.test(part))) found.push(`${file}: name the idea`)
  if (!file.startsWith('src/')) return found
  if (!hasRoom(file)) found.push(`${file}: not in a room of the map`)
  if (/^index\.tsx?$/.test(name) && !/^src\/app\/words\/[a-z-]+\/index\.ts$/i.test(file)) {
    found.push(`${file}: no index files; import the file itself`)
  }
  if (!/^([a-z0-9]+(-[a-z0-9]+)*|[A-Z][A-Za-z0-9]*(?=\.tsx$|\.module\.css$))(\.[a-z]+)+$/.test(name))
    found.push(`${file}: kebab-case for files, PascalCase.tsx for components`)
  return found
}

function sizeBreaches(file: string, text: string): string[] {
  const lines = text.trimEnd().split('\n').length
  return file.endsWith('.json') || lines <= MOST_LINES
    ? []
    : [`${file}: ${String(lines)} lines, over ${String(MOST_LINES)}`]
}

function codeBreaches(file: string, text: string): string[] {
  if (!/\.tsx?$/.test(file)) return []
  const { program, module, comments, errors } = parseSync(file, text)
  if (errors.length > 0) return [`${file}: cannot be read: ${errors[0]?.message ?? ''}`]
  const found: string[] = []
  const says = (what: string) => found.push(`${file}: ${what}`)

  const asked = [
    ...module.staticImports.map((one) => one.moduleRequest.value),
    ...module.staticExports.flatMap((one) => one.entries.flatMap((entry) => entry.moduleRequest?.value ?? [])),
  ]
  const inCore = file.startsWith('src/core/')
  const isDescribed = (start: number) =>
    comments.some((one) => one.value.startsWith('*') && one.end < start && text.slice(one.end, start).trim() === '')
  new Visitor({
    ImportExpression({ source }) {
      if (source.type === 'Literal' && typeof source.value === 'string') asked.push(source.value)
      else says('import() of something that is not a plain string')
    },
    TSImportType({ source }) {
      asked.push(source.value)
    },
    ExportDefaultDeclaration() {
      says('named exports only')
    },
    ExportNamedDeclaration({ declaration, start }) {
      if (!inCore || isDescribed(start)) return
      const named =
        declaration?.type === 'VariableDeclaration'
          ? declaration.declarations.find(({ init }) => init?.type === 'ArrowFunctionExpression')?.id
          : declaration?.type === 'FunctionDeclaration'
            ? declaration.id
            : null
      if (named?.type === 'Identifier') says(`${named.name} does not say what it gives, in which unit, by which source`)
    },
    Identifier({ name }) {
      if (inCore && name === 'Date') says('no clock in the core')
    },
    MemberExpression({ object, property }) {
      if (!inCore || property.type !== 'Identifier') return
      const isMath = object.type === 'Identifier' && object.name === 'Math'
      if (isMath && property.name === 'random') says('no dice in the core')
      if (file === COUNTING) return
      if (isMath && ROUNDERS.has(property.name)) says(`Math.${property.name} belongs in core/basics/count.ts`)
      if (property.name === 'toFixed') says('toFixed belongs in core/basics/count.ts')
    },
    VariableDeclarator({ id, init }) {
      if (inCore && id.type === 'ObjectPattern' && init?.type === 'Identifier' && init.name === 'Math') {
        says('take nothing out of Math: its rounding belongs in core/basics/count.ts')
      }
    },
  }).visit(program)
  return [...found, ...new Set(asked.flatMap((one) => importBreach(file, one) ?? []))]
}
