/** What can fail in a way the user can mend comes back as a value; what should not happen throws. */
export type Result<T, P> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly P[] }

export const good = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value })
export const bad = <P>(...problems: readonly P[]): { readonly ok: false; readonly problems: readonly P[] } => ({
  ok: false,
  problems,
})
