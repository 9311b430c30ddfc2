import type { Page } from 'playwright-core'
import { CARDS, PLACES, type CardName, type Place, type Route } from '../../src/app/screens/route.ts'

/** The addresses of screens without a plan, and with one. A screen of the app that is missing here does not compile. */
const SCREENS: Readonly<Record<Exclude<Route['screen'], 'plan'>, (id: string) => string>> = {
  front: () => '#/',
  new: () => '#/new',
  settings: () => '#/settings',
  trust: () => '#/trust',
  how: () => '#/how',
  words: () => '#/words',
  prices: () => '#/prices',
  scan: () => '#/scan',
  take: () => '#/take/nothing-in-it',
  'hand-over': (id) => `#/hand-over/${id}`,
  history: (id) => `#/history/${id}`,
}

/** What a card is looked at with: nothing, or records of the examples. A card of the app that is missing here fails. */
const RECORDS: Readonly<Record<CardName, readonly (string | null)[]>> = {
  catch: [null],
  chambers: [null],
  walls: [null],
  openings: [null],
  ground: [null],
  trays: [null],
  place: [null],
  mixes: [null],
  show: [null],
  compare: [null],
  cutting: [null],
  repair: [null],
  within: [null],
  sheets: [null],
  differences: [null],
  item: ['cement'],
  offer: ['cement-corner'],
  prices: [null],
  pay: ['cement', 'other'],
  paid: ['first-cement'],
  spending: [null],
  group: [null],
  member: [null, 'smokers'],
  gift: [null, 'digging'],
  payout: [null],
  setout: [null],
  tapes: [null],
  levels: [null],
  course: [null],
  measured: [null],
  batch: [null],
  needed: [null],
  crew: [null],
  firing: [null],
  run: [null],
  log: [null, 'example-firing-04'],
  money: [null],
  upkeep: [null, 'mesh'],
  heat: [null],
}

/** Ids of two examples: of one chamber, with purchases and a group, and of two, with a log of firings. */
export interface Examples {
  readonly one: string
  readonly two: string
}

/** Every address of the app, by a short name. */
export function addresses({ one, two }: Examples): ReadonlyMap<string, string> {
  const found = new Map<string, string>()
  for (const [screen, of] of Object.entries(SCREENS)) found.set(screen, of(two))
  for (const place of PLACES) {
    const base = `#/plan/${place === 'buy' || place === 'build' ? one : two}/${place}`
    found.set(place, base)
    for (const [card, record] of cardsOver(place)) {
      const name = record === null ? card : `${card}:${record}`
      found.set(`${place}/${name}`, `${base}/${encodeURIComponent(name)}`)
    }
  }
  return found
}

const cardsOver = (place: Place): (readonly [CardName, string | null])[] =>
  [...CARDS[place], ...(place === 'plan' ? CARDS.every : [])].flatMap((card) => {
    const records = RECORDS[card]
    return records.map((record) => [card, record] as const)
  })

/** Opens an address of the app in the page as it is, waits for its title or its sheet, and until nothing on it changes any more. */
export async function goTo(page: Page, address: string, sign?: 'dialog' | 'heading'): Promise<void> {
  await page.evaluate((to) => {
    window.location.hash = to
  }, address)
  await settled(page)
  if (sign === undefined) return
  const awaited = (sign === 'dialog' ? page.getByRole(sign) : page.getByRole(sign, { level: 1 })).first()
  if ((await awaited.count()) > 0) return
  await awaited.waitFor()
  await settled(page)
}

/** Waits until the page has kept still for so long. A page that never does is looked at as it is. */
export const settled = (page: Page, stillMs = 150): Promise<void> =>
  page.evaluate(
    (wait) =>
      new Promise((resolve) => {
        const done = () => {
          watch.disconnect()
          resolve()
        }
        let still = setTimeout(done, wait)
        const watch = new MutationObserver(() => {
          clearTimeout(still)
          still = setTimeout(done, wait)
        })
        watch.observe(document, { subtree: true, childList: true, attributes: true, characterData: true })
        setTimeout(done, 1500)
      }),
    stillMs,
  )

/** Waits until the page has taken its new size: what hears of it does so in the next frame, and changes the page in that or the one after. */
export const resized = async (page: Page): Promise<void> => {
  await page.evaluate(
    () =>
      new Promise((resolve) => {
        requestAnimationFrame(() => requestAnimationFrame(() => resolve(undefined)))
      }),
  )
  await settled(page, 20)
}
