import type { Mutant } from './mutants.ts'
import { childrenOf, isOnlyType, parsed, type Node } from './syntax.ts'

/** A mutant and the number by which it is switched on. */
export interface Numbered extends Mutant {
  readonly id: number
}

const LOOPS = new Set(['WhileStatement', 'DoWhileStatement', 'ForStatement', 'ForOfStatement', 'ForInStatement'])

const placeOf = ({ start, end }: { readonly start: number; readonly end: number }): string =>
  `${String(start)}-${String(end)}`

/**
 * The file with all its mutants in it, each asleep until `__mutant` says otherwise, and with a count in every loop, so that
 * a loop which a mutant made endless can be left. One text serves all mutants, and the tests load it once.
 */
export function withSwitches(source: string, mutants: readonly Numbered[]): string {
  const byPlace = new Map<string, Numbered[]>()
  for (const mutant of mutants) {
    const place = placeOf(mutant)
    byPlace.set(place, [...(byPlace.get(place) ?? []), mutant])
  }

  const inner = (node: Node): string => {
    let text = ''
    let at = node.start
    for (const child of childrenOf(node)) {
      if (child.start < at) continue // a shorthand property is its own value
      text += source.slice(at, child.start) + shown(child, node)
      at = child.end
    }
    return text + source.slice(at, node.end)
  }

  const shown = (node: Node, parent: Node | undefined): string => {
    if (isOnlyType(node)) return source.slice(node.start, node.end)
    let text = inner(node)
    const here = byPlace.get(placeOf(node)) ?? []
    if (node.type === 'BlockStatement') {
      for (const { id } of here) text = `{ if (!__mutant(${String(id)})) ${text} }`
    } else if (!node.type.endsWith('Statement') && node.type !== 'ChainExpression') {
      for (const { id, text: other } of here) text = `(__mutant(${String(id)}) ? (${other}) : (${text}))`
    }
    if (parent !== undefined && LOOPS.has(parent.type) && node === parent['body']) return `{ __tick(); ${text}\n }`
    const startsStatement =
      node.type === 'ExpressionStatement' && /^(Block|Program|SwitchCase)/.test(parent?.type ?? '')
    return startsStatement ? `;${text}` : text
  }
  return shown(parsed(source), undefined)
}
