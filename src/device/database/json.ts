/** Values that a document or a file can hold. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json }

export const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** Keys that could reach an object's prototype; nothing of ours has them. */
export const isUnsafeKey = (key: string): boolean => key === '__proto__' || key === 'constructor' || key === 'prototype'

/** Whether two values say the same, whatever objects they are made of; the order of keys says nothing. */
export function sameJson(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true
  if (Array.isArray(a))
    return Array.isArray(b) && a.length === b.length && a.every((value, index) => sameJson(value, b[index]))
  if (!isRecord(a) || !isRecord(b)) return false
  const keys = Object.keys(a)
  return keys.length === Object.keys(b).length && keys.every((key) => Object.hasOwn(b, key) && sameJson(a[key], b[key]))
}

/** `next`, made of the objects of `before` wherever they say the same, so that "changed" can be asked by identity. */
export function sharing<T>(before: unknown, next: T): T {
  if (Object.is(before, next) || !isRecord(next) || !isRecord(before))
    return Array.isArray(next) && sameJson(before, next) ? (before as T) : next
  let same = Object.keys(before).length === Object.keys(next).length
  const result: Record<string, unknown> = {}
  for (const [key, value] of Object.entries(next)) {
    result[key] = sharing(before[key], value)
    if (!Object.hasOwn(before, key) || !Object.is(result[key], before[key])) same = false
  }
  return (same ? before : result) as T
}

/** The value at a path with dots, or undefined. */
export function valueAt(root: unknown, path: string): unknown {
  let value = root
  for (const key of path.split('.')) {
    if (!isRecord(value) || !Object.hasOwn(value, key)) return undefined
    value = value[key]
  }
  return value
}

/** A copy of `root` with another value at a path with dots; what is not on the path is shared; undefined takes the key away. */
export function withValueAt(root: unknown, path: string, value: unknown): Record<string, unknown> {
  const [key = '', ...rest] = path.split('.')
  if (isUnsafeKey(key)) throw new Error(`not a field: ${path}`)
  const copy = isRecord(root) ? { ...root } : {}
  const inner = rest.length === 0 ? value : withValueAt(copy[key], rest.join('.'), value)
  if (inner === undefined) delete copy[key]
  else copy[key] = inner
  return copy
}

/** The same for several paths, one after the other. */
export const withValuesAt = (
  root: Record<string, unknown>,
  values: Readonly<Record<string, unknown>>,
): Record<string, unknown> =>
  Object.entries(values).reduce((changed, [path, value]) => withValueAt(changed, path, value), root)

/** How many values differ between two: a value that came or went counts as one. */
export function countChanges(before: unknown, after: unknown): number {
  if (sameJson(before, after)) return 0
  if (!isRecord(before) || !isRecord(after)) return 1
  const keys = new Set([...Object.keys(before), ...Object.keys(after)])
  return [...keys].reduce((sum, key) => sum + countChanges(before[key], after[key]), 0)
}
