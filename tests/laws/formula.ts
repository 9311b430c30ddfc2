import { all, create, type FactoryFunctionMap, type MathNode } from 'mathjs'
import type { Derived } from '../../src/core/basics/derived.ts'
import { UNITS, type Dimension, type Unit } from '../../src/core/basics/unit.ts'

const math = create(all as FactoryFunctionMap, {})
// Whole numbers as the core counts them: what exceeds a whole by less than a thousand-millionth is that whole.
math.import(
  {
    ceil: (x: number) => Math.ceil(x - 1e-9),
    floor: (x: number) => Math.floor(x + 1e-9),
    round: (x: number) => Math.round(x),
  },
  { override: true },
)

const nodes = new Map<string, MathNode>()

/** A formula of the core as a general expression parser reads it. */
function parsed(formula: string): MathNode {
  const known = nodes.get(formula)
  if (known !== undefined) return known
  const node = math.parse(formula.replaceAll('·', '*').replaceAll('−', '-'))
  nodes.set(formula, node)
  return node
}

const compiled = new Map<string, { evaluate: (scope: object) => unknown }>()

/** The formula's value from the values of its inputs, by mathjs. */
export function evaluated({ formula = '', inputs }: Derived): number {
  let code = compiled.get(formula)
  if (code === undefined) {
    code = parsed(formula).compile()
    compiled.set(formula, code)
  }
  const scope = Object.fromEntries(Object.entries(inputs).map(([symbol, input]) => [symbol, input.value]))
  return Number(code.evaluate(scope))
}

/** Exponents over the base dimensions, and how many coherent units one of it holds; null stands for a bare zero, which fits any. */
interface Dim {
  readonly powers: Readonly<Record<string, number>>
  readonly factor: number
}
type Size = Dim | 'zero'

const NONE: Dim = { powers: {}, factor: 1 }
const BASES = ['length', 'mass', 'time', 'temperature', 'money'] as const

export function dimensionOf(unit: Unit): Dim {
  const entry: Dimension = UNITS[unit]
  return { powers: Object.fromEntries(BASES.map((base) => [base, entry[base] ?? 0])), factor: entry.factor ?? 1 }
}

const scaled = (one: Dim, by: number): Dim => ({
  powers: Object.fromEntries(BASES.map((base) => [base, (one.powers[base] ?? 0) * by])),
  factor: one.factor ** by,
})
const times = (a: Dim, b: Dim, sign: 1 | -1): Dim => ({
  powers: Object.fromEntries(BASES.map((base) => [base, (a.powers[base] ?? 0) + sign * (b.powers[base] ?? 0)])),
  factor: a.factor * b.factor ** sign,
})

export const sameDimension = (a: Dim, b: Dim): boolean =>
  BASES.every((base) => Math.abs((a.powers[base] ?? 0) - (b.powers[base] ?? 0)) < 1e-9) &&
  Math.abs(a.factor / b.factor - 1) < 1e-9

const shown = (one: Size): string =>
  one === 'zero'
    ? '0'
    : `${BASES.filter((base) => one.powers[base])
        .map((base) => `${base}^${String(one.powers[base])}`)
        .join(' ')}×${String(one.factor)}`

/** The dimension that a formula's arithmetic gives, or an error that says where it does not balance. */
export function formulaDimension(formula: string, inputs: Readonly<Record<string, Derived>>): Size {
  const walk = (node: MathNode): Size => {
    const raw = node as unknown as {
      type: string
      value: unknown
      name: string
      op: string
      args: MathNode[]
      content: MathNode
      fn: { name: string }
    }
    switch (raw.type) {
      case 'ConstantNode':
        return Number(raw.value) === 0 ? 'zero' : NONE
      case 'ParenthesisNode':
        return walk(raw.content)
      case 'SymbolNode': {
        const input = inputs[raw.name]
        if (input === undefined) throw new Error(`${formula}: ${raw.name} is no input`)
        return dimensionOf(input.unit)
      }
      case 'OperatorNode':
        return operated(raw.op, raw.args)
      case 'FunctionNode':
        return called(raw.fn.name, raw.args)
      default:
        throw new Error(`${formula}: ${raw.type} is not known here`)
    }
  }
  const same = (args: readonly Size[]): Size => {
    const real = args.filter((one) => one !== 'zero')
    const [first] = real
    if (first === undefined) return 'zero'
    for (const one of real)
      if (!sameDimension(first, one)) throw new Error(`${formula}: ${shown(first)} does not go with ${shown(one)}`)
    return first
  }
  const constant = (node: MathNode): number => Number(node.evaluate())
  const operated = (op: string, args: MathNode[]): Size => {
    const [a, b] = args
    if (a === undefined) throw new Error(formula)
    if (b === undefined) return walk(a)
    if (op === '+' || op === '-') return same([walk(a), walk(b)])
    if (op === '^') {
      const base = walk(a)
      return base === 'zero' ? 'zero' : scaled(base, constant(b))
    }
    const left = walk(a)
    const right = walk(b)
    if (left === 'zero') return 'zero'
    if (right === 'zero') return op === '*' ? 'zero' : NONE
    if (op === '*') return times(left, right, 1)
    if (op === '/') return times(left, right, -1)
    throw new Error(`${formula}: ${op} is not known here`)
  }
  const called = (name: string, args: MathNode[]): Size => {
    const sizes = args.map(walk)
    if (name === 'max' || name === 'min' || name === 'abs') return same(sizes)
    const [first] = sizes
    if (first === undefined) throw new Error(formula)
    if (name === 'ceil' || name === 'floor' || name === 'round') {
      // A number may only be made whole once it is a count (or whole money).
      if (first !== 'zero' && BASES.some((base) => base !== 'money' && (first.powers[base] ?? 0) !== 0))
        throw new Error(`${formula}: ${name} of ${shown(first)}`)
      return first
    }
    if (name === 'sqrt') return first === 'zero' ? 'zero' : scaled(first, 0.5)
    if (first !== 'zero' && !sameDimension(first, NONE)) throw new Error(`${formula}: ${name} of ${shown(first)}`)
    return NONE
  }
  return walk(parsed(formula))
}

const isDerived = (value: object): value is Derived =>
  'id' in value && 'value' in value && 'unit' in value && 'inputs' in value

/** Every worked-out number inside a result, itself and what it came from, each once. */
export function derivedIn(root: object): Derived[] {
  const found: Derived[] = []
  const seen = new Set<object>()
  const open: object[] = [root]
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    if (seen.has(next)) continue
    seen.add(next)
    if (isDerived(next)) found.push(next)
    const inside: readonly unknown[] = next instanceof Map ? [...next.values()] : Object.values(next)
    for (const value of inside) if (typeof value === 'object' && value !== null) open.push(value)
  }
  return found
}
