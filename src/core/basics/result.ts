/** What can fail in a way the user can mend comes back as a value; what should not happen throws. */
export type Result<T, P> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly P[] }

/** A result that worked. */
export const good = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value })
/** A result that did not, with all that stood in the way. */
export const bad = <P>(...problems: readonly P[]): { readonly ok: false; readonly problems: readonly P[] } => ({
  ok: false,
  problems,
})
