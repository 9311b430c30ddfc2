import { bad, good, type Result } from '../../core/basics/result.ts'
import { isRecord, isUnsafeKey } from '../database/json.ts'

/** A plan nests seven deep; a file that nests deeper than this was made to do harm. */
const MOST_DEPTH = 32

export type JsonProblem = 'not-json' | 'too-deep' | 'unsafe-key'

/** How deep brackets nest outside strings: counted before parsing, since a parser would follow them down. */
function isTooDeep(text: string): boolean {
  let depth = 0
  let inString = false
  for (let index = 0; index < text.length; index++) {
    const char = text[index]
    if (inString) {
      if (char === '\\') index++
      else if (char === '"') inString = false
    } else if (char === '"') inString = true
    else if (char === '{' || char === '[') {
      if (++depth > MOST_DEPTH) return true
    } else if (char === '}' || char === ']') depth--
  }
  return false
}

function hasUnsafeKey(value: unknown): boolean {
  if (Array.isArray(value)) return value.some(hasUnsafeKey)
  return isRecord(value) && Object.entries(value).some(([key, inner]) => isUnsafeKey(key) || hasUnsafeKey(inner))
}

/** Text from outside as plain data: no depth that hangs the phone, no key that reaches a prototype. */
export function readJson(text: string): Result<unknown, JsonProblem> {
  if (isTooDeep(text)) return bad('too-deep')
  try {
    const value: unknown = JSON.parse(text)
    return hasUnsafeKey(value) ? bad('unsafe-key') : good(value)
  } catch {
    return bad('not-json')
  }
}
