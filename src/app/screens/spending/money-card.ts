export const MONEY_CARDS = ['pay', 'paid', 'spending', 'group', 'member', 'gift', 'payout'] as const

/** What opens over Buy about the group's money: an account, or one record by its id (`pay` by its item); without an id a new one. */
export interface MoneyCard {
  readonly kind: (typeof MONEY_CARDS)[number]
  readonly id: string | null
}

export function moneyCardOf(card: string | null): MoneyCard | null {
  if (card === null) return null
  const [name = '', ...rest] = card.split(':')
  const kind = MONEY_CARDS.find((one) => one === name)
  return kind === undefined ? null : { kind, id: rest.length === 0 ? null : rest.join(':') }
}
