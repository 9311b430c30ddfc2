import type { Page } from 'playwright-core'

/** Where the focus stands, as somebody who looks and somebody who listens find it. */
interface Stop {
  readonly name: string
  /** A ring of 2 px at least is drawn round it or round what stands for it (WCAG 2.2, success criteria 2.4.7, 2.4.13). */
  readonly isRinged: boolean
  /** Its middle can be seen: it is in the window, and nothing lies over it (2.4.11). */
  readonly isSeen: boolean
}

const stop = (page: Page): Promise<Stop | null> =>
  page.evaluate(() => {
    const on = document.activeElement
    if (on === null || on === document.body || on.tagName === 'DIALOG' || on.tagName === 'MAIN') return null
    const label = on instanceof HTMLInputElement || on instanceof HTMLSelectElement ? on.labels?.[0] : undefined
    const group = on.closest('fieldset')?.querySelector('legend')?.textContent ?? ''
    const words = (label ?? on) as HTMLElement
    const name = on.getAttribute('aria-label') ?? `${group} ${words.innerText}`
    const stand = on.closest('label, .typed') ?? on
    const isRound = (one: Element) => {
      const { outlineStyle, outlineWidth } = getComputedStyle(one)
      return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2
    }
    const stroke = on.querySelector(':scope > rect')
    const isStroked = stroke !== null && Number.parseFloat(getComputedStyle(stroke).strokeWidth) >= 2
    const { left, right, top, bottom } = stand.getBoundingClientRect()
    const hit = document.elementFromPoint((left + right) / 2, (top + bottom) / 2)
    const isSeen = hit !== null && (stand.contains(hit) || hit.contains(stand))
    return { name: name.replaceAll(/\s+/g, ' ').trim(), isRinged: isRound(on) || isRound(stand) || isStroked, isSeen }
  })

/** Walks with Tab until the name under the focus fits, and throws at what cannot be seen or never comes. */
export async function tabTo(page: Page, name: RegExp, most = 120): Promise<void> {
  const passed: string[] = []
  for (let count = 0; count < most; count++) {
    await page.keyboard.press('Tab')
    const here = await stop(page)
    if (here === null) continue
    if (!here.isRinged) throw new Error(`no ring round ${here.name}`)
    if (!here.isSeen) throw new Error(`cannot be seen: ${here.name}`)
    if (name.test(here.name)) return
    passed.push(here.name)
  }
  throw new Error(`${String(name)} not reached past ${passed.join(' | ')}`)
}

/** The name of what has the focus. */
export const underFocus = async (page: Page): Promise<string> => (await stop(page))?.name ?? ''

/** Walks round once and gives the names in order, until the first comes again: whoever walks on gets everywhere, and out again. */
export async function wayRound(page: Page, most = 200): Promise<string[]> {
  const names: string[] = []
  let isOut = false
  for (let count = 0; count < most; count++) {
    await page.keyboard.press('Tab')
    const here = await stop(page)
    if (here === null) {
      isOut = names.length > 0
      continue
    }
    if (names.length > 0 && here.name === names[0] && isOut) return names
    names.push(here.name)
  }
  throw new Error(`no way out after ${names.slice(-5).join(' | ')}`)
}
