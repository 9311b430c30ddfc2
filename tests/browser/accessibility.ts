import { createRequire } from 'node:module'
import { readFile } from 'node:fs/promises'
import type { AxeResults, Check, RunOptions, Spec } from 'axe-core'
import type { Page } from 'playwright-core'

const script = readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

/**
 * Text at 7 : 1, large text at 4.5 : 1, as one reads it in the sun (WCAG 2.2, success criterion 1.4.6), asked of axe's rule for the lesser
 * contrast: its own rule for the greater passes over whatever fails the lesser, so that both would have to run. The rest is as axe has it.
 */
const CONTRAST: Check = {
  id: 'color-contrast',
  options: {
    ignoreUnicode: true,
    ignoreLength: false,
    ignorePseudo: false,
    boldValue: 700,
    boldTextPt: 14,
    largeTextPt: 18,
    contrastRatio: { normal: { expected: 7 }, large: { expected: 4.5 } },
    pseudoSizeThreshold: 0.25,
    shadowOutlineEmMax: 0.1,
    textStrokeEmMin: 0.03,
  },
}

/** Where each thing that passes stands is nothing that we ask. */
const FAULTS: RunOptions = { resultTypes: ['violations'] }

/** Only what a light changes. */
export const COLOURS: RunOptions = { ...FAULTS, runOnly: ['color-contrast'] }

interface Axe {
  configure: (spec: Spec) => void
  run: (options: RunOptions) => Promise<AxeResults>
}

/** What axe finds wrong on the page, one line each: the rule, then where. */
export async function accessibilityFaults(page: Page, options: RunOptions = FAULTS): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) {
    await page.evaluate(await script)
    await page.evaluate((check) => {
      ;(window as unknown as { axe: Axe }).axe.configure({ checks: [check] })
    }, CONTRAST)
  }
  const results = await page.evaluate((given) => (window as unknown as { axe: Axe }).axe.run(given), options)
  if (results.passes.length === 0) throw new Error('axe looked at nothing')
  return results.violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(' ')).join(', ')}`)
}

/** Drawings with figures whose spoken label has none. */
export const untold = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const top = document.querySelector('dialog[open]') ?? document.body
    return [...top.querySelectorAll('svg')].flatMap((one) => {
      if (one.closest('[aria-hidden=true], .print-only, [hidden]') !== null || one.getBoundingClientRect().width === 0)
        return []
      const figures = [...one.querySelectorAll('text')].filter((text) => /\d\d/.test(text.textContent))
      const label = one.getAttribute('aria-label') ?? ''
      return label === '' || (figures.length > 0 && !/\d/.test(label)) ? [`untold: ${one.outerHTML.slice(0, 90)}`] : []
    })
  })

/** Least side of what is pressed, px (WCAG 2.2, success criterion 2.5.5). */
const THUMB_PX = 44

/** Whatever can be pressed and is smaller than a thumb. A label takes the press for its input. */
export const tooSmall = (page: Page): Promise<string[]> =>
  page.evaluate((least) => {
    const top = document.querySelector('dialog[open]') ?? document.body
    const all = top.querySelectorAll('a[href], button, input, select, summary, textarea, [role=button], [role=slider]')
    return [...all].flatMap((one) => {
      const { width, height } = (one.closest('label, .typed') ?? one).getBoundingClientRect()
      const isShown = width > 1 && height > 1 && one.checkVisibility({ visibilityProperty: true })
      const isSmall = width < least - 0.5 || height < least - 0.5
      const size = `${width.toFixed()} × ${height.toFixed()}`
      return isShown && isSmall ? [`${one.outerHTML.slice(0, 90)} ${size}`] : []
    })
  }, THUMB_PX)
