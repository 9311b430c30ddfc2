import { parse, type MathNode } from 'mathjs'
import { expect } from 'vitest'
import type { Derived } from '../../../src/core/basics/derived.ts'
import { UNITS, type Dimension } from '../../../src/core/basics/unit.ts'

const BASES = ['length', 'mass', 'time', 'temperature', 'money'] as const
type Vector = readonly number[]

const vectorOf = (dimension: Dimension): Vector => BASES.map((base) => dimension[base] ?? 0)
const factorOf = (dimension: Dimension): number => dimension.factor ?? 1
const near = (a: Vector, b: Vector) => a.every((x, index) => Math.abs(x - (b[index] ?? 0)) < 1e-9)

interface Loose {
  readonly type: string
  readonly name?: string
  readonly op?: string
  readonly fn?: { readonly name: string }
  readonly args?: readonly MathNode[]
  readonly content?: MathNode
  readonly value?: number
}

/** Dimension of an expression, from those of its symbols; throws where unlike things are added or compared. */
function dimensionOf(node: MathNode, symbols: Readonly<Record<string, Vector>>): Vector {
  const loose = node as unknown as Loose
  const args = loose.args ?? []
  const [first, second] = args
  if (loose.type === 'ConstantNode') return BASES.map(() => 0)
  if (loose.type === 'ParenthesisNode' && loose.content) return dimensionOf(loose.content, symbols)
  if (loose.type === 'SymbolNode') {
    const found = symbols[loose.name ?? '']
    if (!found) throw new Error(`unknown symbol ${String(loose.name)}`)
    return found
  }
  if (loose.type === 'OperatorNode' && first) {
    const left = dimensionOf(first, symbols)
    if (!second) return left
    if (loose.op === '^') return left.map((x) => x * Number((second as unknown as Loose).value))
    const right = dimensionOf(second, symbols)
    if (loose.op === '*') return left.map((x, index) => x + (right[index] ?? 0))
    if (loose.op === '/') return left.map((x, index) => x - (right[index] ?? 0))
    if (!near(left, right)) throw new Error(`adds unlike things: ${node.toString()}`)
    return left
  }
  if (loose.type === 'FunctionNode') {
    const all = args.map((arg) => dimensionOf(arg, symbols))
    const [one] = all
    if (!one) throw new Error('function of nothing')
    if (loose.fn?.name === 'sqrt') return one.map((x) => x / 2)
    if (!all.every((other) => near(one, other))) throw new Error(`compares unlike things: ${node.toString()}`)
    return one
  }
  throw new Error(`cannot read ${node.toString()}`)
}

/** Every Derived that can be reached from a value, itself and its inputs included. */
export function allDerived(root: unknown, seen = new Set<object>(), out: Derived[] = []): Derived[] {
  if (typeof root !== 'object' || root === null || seen.has(root)) return out
  seen.add(root)
  if ('id' in root && 'unit' in root && 'inputs' in root) out.push(root as Derived)
  for (const value of Object.values(root)) allDerived(value, seen, out)
  return out
}

/**
 * Evaluates the formula of every worked-out number with mathjs and compares it with the value; and its units, formula by formula.
 * An energy in J and a time in h meet through the factors of the units.
 */
export function checkWorking(root: unknown): number {
  let checked = 0
  for (const number of allDerived(root)) {
    if (number.formula === undefined) continue
    const node = parse(number.formula.replaceAll('·', '*').replaceAll('−', '-'))
    const scope: Record<string, number> = {}
    const symbols: Record<string, Vector> = {}
    for (const [symbol, input] of Object.entries(number.inputs)) {
      scope[symbol] = input.value
      symbols[symbol] = vectorOf(UNITS[input.unit])
      expect(factorOf(UNITS[input.unit]) > 0).toBe(true)
    }
    const value: unknown = node.compile().evaluate(scope)
    expect(typeof value).toBe('number')
    const off = Math.abs(Number(value) - number.value)
    if (off > 1e-9 * Math.max(1e-9, Math.abs(number.value)))
      throw new Error(`${number.id}: ${number.formula} is ${String(value)}, not ${String(number.value)}`)
    const found = dimensionOf(node, symbols)
    if (!near(found, vectorOf(UNITS[number.unit])))
      throw new Error(`${number.id}: ${number.formula} is not in ${number.unit}`)
    checked++
  }
  return checked
}
