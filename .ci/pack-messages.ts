import { NONE_SHARED, SIGNS } from '../src/app/words/read-packed.ts'

/** A message compiled by Lingui: text, or texts and arguments in turn. */
export type Compiled = string | readonly Token[]
type Token = string | readonly [name: string, kind?: string, format?: string | Choices]
type Choices = Readonly<Record<string, Compiled | number | undefined>>

const [OPEN, PART, CLOSE, CASE, SAYS, COUNT] = SIGNS

/** Compiled messages as one text, a line each: shorter than as JSON, and read back by `src/app/words/read-packed.ts`. */
export const packedMessages = (messages: readonly Compiled[]): string => messages.map(written).join('\n')

const written = (message: Compiled): string =>
  typeof message === 'string'
    ? message
    : message.map((token) => (token === '#' ? COUNT : typeof token === 'string' ? token : argument(token))).join('')

function argument([name, kind, format]: Exclude<Token, string>): string {
  const parts = [name, ...(kind === undefined ? [] : [kind]), ...(format === undefined ? [] : [formatted(format)])]
  return OPEN + parts.join(PART) + CLOSE
}

const formatted = (format: string | Choices): string =>
  typeof format === 'string'
    ? format
    : Object.entries(format)
        .map(([key, says]) =>
          typeof says === 'object' || typeof says === 'string' ? CASE + key + SAYS + written(says) : '',
        )
        .join('')

/** Sorted names, each by how many signs it shares with the one before and what follows. */
export function packedNames(names: readonly string[]): string {
  let before = ''
  return names
    .map((name) => {
      let shared = 0
      while (shared < before.length && before[shared] === name[shared]) shared++
      before = name
      return String.fromCodePoint(NONE_SHARED + shared) + name.slice(shared)
    })
    .join('\n')
}
