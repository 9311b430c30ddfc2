import path from 'node:path'

/** The rooms of `src` in the order of the work: a file imports from its own room, or from one in an earlier line. */
const ORDER: readonly (readonly string[])[] = [
  ['src/core/basics', 'src/core/sources'],
  ['src/core/plan'],
  ['src/core/fish'],
  ['src/core/geometry'],
  ['src/core/layout'],
  ['src/core/heat'],
  ['src/core/quantities'],
  ['src/core/cutting'],
  ['src/core/purchase'],
  ['src/core/costs'],
  ['src/core/schedule'],
  ['src/core/documents'],
  ['src/core/work-out.ts'],
  ['src/core/choosing'],
  ['src/device'],
  ['src/app/words'],
  ['src/app/state'],
  ['src/app/parts'],
  ['src/app/drawings'],
  ['src/app/screens'],
  ['src/main.tsx'],
]

interface Ban {
  readonly from: string
  readonly to: RegExp
  readonly because: string
}

const bans: readonly Ban[] = [
  { from: 'src/app/words', to: /^src\/device\//, because: 'only app/state and main know the device' },
  { from: 'src/app/parts', to: /^src\/(device|app\/state)\/|^(zustand|idb|yjs)\b/, because: 'parts know no stores' },
  {
    from: 'src/app/drawings',
    to: /^src\/(device|app\/state)\/|^(zustand|idb|yjs)\b/,
    because: 'drawings know no stores',
  },
  { from: 'src/app/screens', to: /^src\/device\/|^(idb|yjs)\b/, because: 'only app/state and main know the device' },
  { from: 'src/device', to: /^(react|react-dom|zustand)\b/, because: 'device knows a plan, never a screen' },
  {
    from: 'src/core',
    to: /^(?!src\/|shared\/|zod\/mini$)/,
    because: 'core uses zod/mini and nothing else from outside',
  },
  { from: 'src', to: /^node:/, because: 'src runs in a browser' },
]

/** The line of ORDER that a path belongs to; -1 when it lies in no known room. */
const lineOf = (file: string) => ORDER.findIndex((line) => line.some((room) => isIn(file, room)))
const roomOf = (file: string) => ORDER.flat().find((room) => isIn(file, room))
const isIn = (file: string, room: string) => file === room || file.startsWith(`${room}/`)

/** A relative import as a path from the top of the repository; a package's name stays as it is. */
function resolved(file: string, asked: string): string {
  const plain = asked.replace(/\?.*$/, '')
  return plain.startsWith('.') ? path.posix.join(path.posix.dirname(file), plain) : plain
}

/** Why this file may not import that, or nothing. Both the order of rooms and the bans are asked. */
export function importBreach(file: string, asked: string): string | undefined {
  const target = resolved(file, asked)
  const says = (why: string) => `${file} imports ${asked}: ${why}`
  const ban = bans.find(({ from, to }) => isIn(file, from) && to.test(target))
  if (ban !== undefined) return says(ban.because)
  if (!asked.startsWith('.')) return undefined
  if (isIn(target, 'shared')) return target.endsWith('.json') ? undefined : says('only data is taken from shared/')
  if (!isIn(target, 'src')) return says('it lies outside src and shared')
  if (isIn(file, WORKER) !== isIn(target, WORKER)) return says('the service worker shares nothing with the page')
  const [own, other] = [lineOf(file), lineOf(target)]
  if (own === -1 || other === -1) return says('not a room of the map')
  if (own === other) return undefined
  return other < own ? undefined : says(`${roomOf(target) ?? ''} comes after ${roomOf(file) ?? ''}`)
}

const WORKER = 'src/device/offline/worker'

/** True when the file lies in a room of the map, or is one of the few that need none. */
export const hasRoom = (file: string) =>
  lineOf(file) !== -1 ||
  /^src\/(index\.html|([a-z-]+\/)*tsconfig\.json|[a-z-]+\.d\.ts|app\/[a-z-]+\.(module\.)?css)$/.test(file)

/** The rooms and who takes from whom, as a picture that a Markdown reader draws; what follows by way of another room is left out. */
export function picture(files: ReadonlyMap<string, string>): string {
  const takes = new Map<string, Set<string>>()
  for (const [file, text] of files)
    for (const [, asked = ''] of text.matchAll(/(?:from|import)\s+'([^']+)'/g)) {
      const [own, other] = [roomOf(file), roomOf(resolved(file, asked))]
      if (own === undefined || other === undefined || own === other) continue
      takes.set(own, (takes.get(own) ?? new Set()).add(other))
    }
  const reaches = (from: string, to: string): boolean =>
    [...(takes.get(from) ?? [])].some((room) => room === to || reaches(room, to))
  const name = (room: string) => room.replace(/^src\//, '').replace(/\.ts$/, '')
  const arrows = [...takes].flatMap(([own, others]) =>
    [...others]
      .filter((other) => ![...others].some((between) => between !== other && reaches(between, other)))
      .map((other) => `  ${name(own)} --> ${name(other)}`),
  )
  return ['```mermaid', 'graph TD', ...arrows.sort(), '```', ''].join('\n')
}
