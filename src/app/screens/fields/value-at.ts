/** The value at a path with dots, or undefined where there is none. */
export function valueAt(from: unknown, path: string): unknown {
  let value = from
  for (const name of path.split('.')) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, name)) return undefined
    value = (value as Record<string, unknown>)[name]
  }
  return value
}
