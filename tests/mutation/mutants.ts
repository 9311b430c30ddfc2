import { childrenOf, isNode, isOnlyType, parsed, type Node } from './syntax.ts'

/** One small fault: the text between `start` and `end` put otherwise. */
export interface Mutant {
  readonly kind: string
  readonly start: number
  readonly end: number
  /** What stands there instead; of a block, nothing. */
  readonly text: string
  readonly isBlock: boolean
}

const SWAPPED: Readonly<Record<string, readonly string[]>> = {
  '+': ['-'],
  '-': ['+'],
  '*': ['/'],
  '/': ['*'],
  '%': ['*'],
  '<': ['<=', '>='],
  '<=': ['<', '>'],
  '>': ['>=', '<='],
  '>=': ['>', '<'],
  '===': ['!=='],
  '!==': ['==='],
  '&&': ['||'],
  '||': ['&&'],
  '??': ['&&'],
  '+=': ['-='],
  '-=': ['+='],
  '*=': ['/='],
  '/=': ['*='],
}

const OTHER_METHOD: Readonly<Record<string, string>> = {
  min: 'max',
  max: 'min',
  some: 'every',
  every: 'some',
  floor: 'ceil',
  ceil: 'floor',
  startsWith: 'endsWith',
  endsWith: 'startsWith',
}
const LEFT_OUT = new Set(['filter', 'slice', 'sort', 'toSorted', 'reverse', 'toReversed', 'trim'])

const FUNCTIONS = new Set(['FunctionDeclaration', 'FunctionExpression', 'ArrowFunctionExpression'])

const isText = (node: unknown): boolean =>
  isNode(node) && (node.type === 'TemplateLiteral' || (node.type === 'Literal' && typeof node['value'] === 'string'))

/** Every fault of one file that stands inside a function: what runs while a file is loaded runs once for all tests. */
export function mutantsOf(source: string): readonly Mutant[] {
  const found: Mutant[] = []
  const textOf = ({ start, end }: Node): string => source.slice(start, end)

  const add = (kind: string, at: Node, text: string, isBlock = false): void => {
    if (isBlock || text !== textOf(at)) found.push({ kind, start: at.start, end: at.end, text, isBlock })
  }

  const swapOperator = (node: Node, kind: string): void => {
    const [left, right, operator] = [node['left'], node['right'], node['operator']]
    if (!isNode(left) || !isNode(right) || typeof operator !== 'string') return
    if (operator === '+' && (isText(left) || isText(right))) return
    const between = source.slice(left.end, right.start)
    for (const other of SWAPPED[operator] ?? [])
      add(kind, node, `${textOf(left)}${between.replace(operator, other)}${textOf(right)}`)
  }

  const changeCall = (node: Node): void => {
    const { callee } = node
    if (!isNode(callee) || callee.type !== 'MemberExpression' || callee['computed'] === true) return
    const { object, property } = callee
    if (!isNode(object) || !isNode(property)) return
    const name = textOf(property)
    const other = OTHER_METHOD[name]
    const rest = source.slice(property.end, node.end)
    if (other !== undefined) add('method', node, `${source.slice(node.start, property.start)}${other}${rest}`)
    if (LEFT_OUT.has(name)) add('method', node, textOf(object))
  }

  const decide = (test: unknown, isLoop: boolean): void => {
    if (!isNode(test)) return
    add('condition', test, 'false')
    if (!isLoop) add('condition', test, 'true')
  }

  const changeLiteral = (node: Node): void => {
    if (typeof node['value'] === 'boolean') add('boolean', node, String(!node['value']))
    if (typeof node['value'] === 'string' && node['value'] !== '') add('text', node, "''")
  }

  const BY_TYPE: Readonly<Record<string, (node: Node) => void>> = {
    BinaryExpression: (node) => {
      swapOperator(node, 'operator')
    },
    LogicalExpression: (node) => {
      swapOperator(node, 'logic')
    },
    AssignmentExpression: (node) => {
      swapOperator(node, 'operator')
    },
    CallExpression: changeCall,
    Literal: changeLiteral,
    TemplateLiteral: (node) => {
      add('text', node, '``')
    },
    ArrayExpression: (node) => {
      add('list', node, '[]')
    },
    ObjectExpression: (node) => {
      add('object', node, '{}')
    },
    BlockStatement: (node) => {
      if ((node['body'] as readonly unknown[]).length > 0) add('block', node, '', true)
    },
    ArrowFunctionExpression: (node) => {
      const { body } = node
      if (isNode(body) && body.type !== 'BlockStatement') add('result', body, 'undefined')
    },
    UnaryExpression: (node) => {
      const argument = node['argument'] as Node
      if (node['operator'] === '!') add('boolean', node, textOf(argument))
      if (node['operator'] === '-') add('operator', node, `+${textOf(argument)}`)
    },
    UpdateExpression: (node) => {
      const other = node['operator'] === '++' ? '--' : '++'
      add('operator', node, textOf(node).replace(node['operator'] as string, other))
    },
    IfStatement: (node) => {
      decide(node['test'], false)
    },
    ConditionalExpression: (node) => {
      decide(node['test'], false)
    },
    WhileStatement: (node) => {
      decide(node['test'], true)
    },
    ForStatement: (node) => {
      decide(node['test'], true)
    },
  }

  /** `inChain`: a link of `a?.b.c()`, which may not be put in brackets; what stands in its arguments may. */
  const visit = (node: Node, inside: boolean, inChain: boolean): void => {
    if (isOnlyType(node) || node.type === 'ThrowStatement' || node.type === 'ImportDeclaration') return
    const isFunction = FUNCTIONS.has(node.type)
    if ((inside || isFunction) && !inChain) BY_TYPE[node.type]?.(node)
    const isLink = node.type === 'MemberExpression' || node.type === 'CallExpression'
    for (const child of childrenOf(node)) {
      if (node.type === 'Property' && child === node['key'] && node['computed'] !== true) continue
      if (child.type.endsWith('Pattern') && child.type !== 'AssignmentPattern') continue
      if (node.type === 'AssignmentPattern' && child === node['left']) continue
      if (node.type === 'AssignmentExpression' && child === node['left']) continue
      const link = node.type === 'ChainExpression' || (inChain && isLink && child !== node['property'])
      const isOnSpine = link && (child === node['object'] || child === node['callee'] || child === node['expression'])
      visit(child, inside || isFunction, isOnSpine)
    }
  }
  visit(parsed(source), false, false)
  return found
}
