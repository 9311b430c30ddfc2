export const RUN_CARDS = ['firing', 'run', 'log', 'money', 'upkeep', 'heat'] as const

/** What opens over Run: a card of its own, one firing of the log, or one part of the kiln. */
export type RunCard =
  | { readonly kind: (typeof RUN_CARDS)[number] }
  | { readonly kind: 'one'; readonly id: string }
  | { readonly kind: 'part'; readonly part: string }

export function runCardOf(card: string | null): RunCard | null {
  if (card === null) return null
  const own = RUN_CARDS.find((kind) => kind === card)
  if (own !== undefined) return { kind: own }
  const [kind, ...rest] = card.split(':')
  const key = rest.join(':')
  if (key === '') return null
  return kind === 'log' ? { kind: 'one', id: key } : kind === 'upkeep' ? { kind: 'part', part: key } : null
}
