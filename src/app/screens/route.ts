import { SITE_CARDS } from './build/build-card.ts'
import { PLAN_CARDS } from './plan/cards.ts'
import { RUN_CARDS } from './run/run-card.ts'
import { MONEY_CARDS } from './spending/money-card.ts'

export const PLACES = ['plan', 'buy', 'build', 'run'] as const
export type Place = (typeof PLACES)[number]

/** What opens over a place, and over every place. A card about one record says which after a colon. */
export const CARDS = {
  plan: [...PLAN_CARDS, 'compare', 'cutting', 'repair'],
  buy: [...MONEY_CARDS, 'item', 'offer', 'prices'],
  build: [...SITE_CARDS, 'crew'],
  run: RUN_CARDS,
  every: ['within', 'sheets', 'differences'],
} as const
export type CardName = (typeof CARDS)[keyof typeof CARDS][number]
export type CardAddress = CardName | `${CardName}:${string}`

/** Where one is in the app. A card is a decision opened over a place; a field is the one to look at in it. */
export type Route =
  | { readonly screen: 'front' }
  | { readonly screen: 'new' }
  | { readonly screen: 'settings' }
  | { readonly screen: 'scan' }
  /** A link that brings a plan in its part after #. */
  | { readonly screen: 'take'; readonly fragment: string }
  | { readonly screen: 'hand-over'; readonly id: string }
  | { readonly screen: 'history'; readonly id: string }
  | { readonly screen: 'trust' }
  | { readonly screen: 'how' }
  | { readonly screen: 'words' }
  | { readonly screen: 'prices' }
  | {
      readonly screen: 'plan'
      readonly id: string
      readonly place: Place
      readonly card: string | null
      readonly field: string | null
    }

const isPlace = (text: string | undefined): text is Place => PLACES.some((place) => place === text)

const ALONE = ['new', 'settings', 'trust', 'scan', 'how', 'words', 'prices'] as const
const isAlone = (text: string | undefined): text is (typeof ALONE)[number] => ALONE.some((screen) => screen === text)

const decoded = (text: string): string => {
  try {
    return decodeURIComponent(text)
  } catch {
    return text
  }
}

/** The part of the address after # as a place in the app; what is not understood leads to the front page. */
export function readRoute(hash: string): Route {
  const [path = '', query = ''] = hash.replace(/^#\/?/, '').split('?')
  const [screen, id, place, card] = path.split('/').map(decoded)
  if (isAlone(screen)) return { screen }
  if (screen === 'take') return { screen, fragment: hash }
  if (id === undefined || id === '') return { screen: 'front' }
  if (screen === 'hand-over' || screen === 'history') return { screen, id }
  if (screen !== 'plan') return { screen: 'front' }
  const field = new URLSearchParams(query).get('field')
  return {
    screen,
    id,
    place: isPlace(place) ? place : 'plan',
    card: card === undefined || card === '' ? null : card,
    field,
  }
}

export const FRONT = '#/'
export const NEW = '#/new'
export const SETTINGS = '#/settings'
export const SCAN = '#/scan'
export const TRUST = '#/trust'
export const PRICES = '#/prices'
export const HOW = '#/how'
export const TRADE_WORDS = '#/words'

export const handOverHref = (id: string): string => `#/hand-over/${encodeURIComponent(id)}`
export const historyHref = (id: string): string => `#/history/${encodeURIComponent(id)}`

export const placeHref = (id: string, place: Place): string => `#/plan/${encodeURIComponent(id)}/${place}`

export const cardHref = (id: string, place: Place, card: CardAddress, field?: string): string =>
  `${placeHref(id, place)}/${encodeURIComponent(card)}${field === undefined ? '' : `?field=${encodeURIComponent(field)}`}`
