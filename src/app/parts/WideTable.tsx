import type { ReactNode } from 'react'

/** Room for a table that may be wider than its place: it is moved sideways by itself, with a finger or the arrow keys. */
export function WideTable({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  return (
    // What scrolls must be reachable by keys.
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex
    <div className="wide-table" role="region" aria-label={name} tabIndex={0}>
      {children}
    </div>
  )
}
