import type { Page } from 'playwright-core'

/** Parts of the page that stick out at the side, or whose words do not fit into them. Drawings scale as a whole and
 * are left out, and so are tables that are moved sideways by themselves (WCAG 2.2, success criterion 1.4.10 lets them). */
export const whatDoesNotFit = (page: Page) =>
  page.evaluate(() => {
    const width = document.documentElement.clientWidth
    const top = document.querySelector('dialog[open]') ?? document.body
    return [...top.querySelectorAll<HTMLElement>('*')].flatMap((one) => {
      if (one.closest('svg, .hide, .print-only, select, input, .wide-table, .maybe .field-name') !== null) return []
      const { left, right, width: own } = one.getBoundingClientRect()
      const sticksOut = own > 0 && (right > width + 1 || (document.dir === 'rtl' && left < -1))
      const isCut = one.scrollWidth > one.clientWidth + 1 && getComputedStyle(one).overflowX !== 'visible'
      return sticksOut || isCut ? [`${one.tagName} ${one.className}: ${one.textContent.slice(0, 40)}`] : []
    })
  })
