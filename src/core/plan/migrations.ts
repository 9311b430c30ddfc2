/** Entry n lifts a plan of version n + 1 to n + 2. Append only: a phone in a drawer may hold any of them. */
export const MIGRATIONS: readonly ((old: Record<string, unknown>) => Record<string, unknown>)[] = []
