import { parseSync } from 'vite'

/** A node of the syntax tree, as far as mutation looks at it. */
export interface Node {
  readonly type: string
  readonly start: number
  readonly end: number
  readonly [field: string]: unknown
}

export const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as Node).type === 'string'

export function parsed(source: string): Node {
  const { program, errors } = parseSync('core.ts', source)
  if (errors.length > 0) throw new Error(errors[0]?.message)
  return program as unknown as Node
}

/** The nodes right below, in the order of the text. */
export const childrenOf = (node: Node): readonly Node[] =>
  Object.values(node)
    .flat()
    .filter(isNode)
    .toSorted((a, b) => a.start - b.start || b.end - a.end)

/** Types are gone when the code runs; these hold code all the same. */
const HOLDS_CODE = new Set(['TSAsExpression', 'TSSatisfiesExpression', 'TSNonNullExpression'])
export const isOnlyType = (node: Node): boolean => node.type.startsWith('TS') && !HOLDS_CODE.has(node.type)
