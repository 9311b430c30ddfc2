import type { BrowserContext } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { messagesOf, packWords } from '../../.ci/words-plugin.ts'
import { tooSmall } from './accessibility.ts'
import { complaints, phone } from './browser.ts'
import { whatDoesNotFit } from './fit.ts'
import { browser, serveApp, url } from './served.ts'

serveApp('once')

const MARKS: Readonly<Record<string, string>> = { a: 'á', e: 'ë', i: 'ï', o: 'ö', u: 'ü', c: 'ç', n: 'ñ', y: 'ý' }

/** English with marks on its letters and 40 % longer; what is put in, and the forms of numbers, stay as they are. */
function pseudo(text: string): string {
  let depth = 0
  const marked = Array.from(text, (letter) => {
    if (letter === '{') depth += 1
    if (letter === '}') depth -= 1
    return depth === 0 ? (MARKS[letter] ?? letter) : letter
  })
  const words = text.replaceAll(/\{[^{}]*\}/g, '').split(' ')
  const more = words.filter((word) => word.length > 2).map((word) => 'ëxtrá'.slice(0, Math.ceil(word.length * 0.4)))
  return `${marked.join('')}${more.length > 0 ? ` ${more.join(' ')}` : ''}`
}

/** A phone that gets these words where the app asks for French. */
async function phoneThatSays(words: (text: string) => string, width: number): Promise<BrowserContext> {
  const context = await phone(browser, { viewport: { width, height: 740 }, serviceWorkers: 'block' })
  const english = messagesOf('en')
  const own = Object.fromEntries(Object.entries(english).map(([name, text]) => [name, words(text)]))
  await context.route('**/assets/fr-*.bin', (route) => route.fulfill({ body: Buffer.from(packWords(english, own)) }))
  return context
}

const SCREENS = ['plan', 'plan/catch', 'plan/walls', 'plan/trays', 'plan/place', 'plan/money', 'plan/compare', 'buy']
const MORE = ['build', 'build/crew', 'run', 'run/log', 'run/upkeep']

/** Opens the example in English, changes to the language, and looks at the screens. */
async function visit(
  context: BrowserContext,
  language: string,
  sign: string | RegExp = messagesOf(language)['card.walls'] ?? 'no such message',
  direction: 'ltr' | 'rtl' = 'ltr',
): Promise<string[]> {
  const page = await context.newPage()
  page.setDefaultTimeout(8000)
  await page.goto(url)
  await page.getByRole('button', { name: 'Example' }).click()
  await page.getByRole('button', { name: /Three chambers/ }).click()
  await page.getByRole('link', { name: /^Walls/ }).waitFor()
  const base = page.url().replace(/plan$/, '')
  await page.evaluate((chosen) => localStorage.setItem('kilnwright.language', chosen), language)
  await page.reload()
  await page.locator(`html[lang=${language}] main`).first().waitFor()
  await page.getByText(sign).first().waitFor()
  await page.evaluate((chosen) => document.documentElement.setAttribute('dir', chosen), direction)
  const found: string[] = []
  for (const screen of [
    '#/',
    '#/settings',
    '#/new',
    '#/how',
    '#/words',
    ...[...SCREENS, ...MORE].map((one) => `${base}${one}`),
  ]) {
    await page.goto(screen.startsWith('#') ? `${url}/${screen}` : screen)
    await page.waitForTimeout(250)
    found.push(...(await whatDoesNotFit(page)).map((one) => `${screen.replace(base, '')}: ${one}`))
    found.push(...(await tooSmall(page)).map((one) => `${screen.replace(base, '')}, too small: ${one}`))
  }
  await page.close()
  return found
}

describe('text of any length', () => {
  it.each([320, 360])('fits at %d px when it is longer by two fifths', async (width) => {
    const context = await phoneThatSays(pseudo, width)
    expect(await visit(context, 'fr', /ëxt/)).toEqual([])
    expect(complaints(context)).toEqual([])
    await context.close()
  })

  it('fits from right to left', async () => {
    const context = await phoneThatSays(pseudo, 360)
    expect(await visit(context, 'fr', /ëxt/, 'rtl')).toEqual([])
    await context.close()
  })

  it.each(['fr', 'pt', 'sw', 'ha'])('fits in %s at 320 px', async (language) => {
    const context = await phone(browser, { viewport: { width: 320, height: 568 } })
    expect(await visit(context, language)).toEqual([])
    expect(complaints(context)).toEqual([])
    await context.close()
  })
})

describe('the language', () => {
  it('is changed in place on the front page, kept, and says so to the browser', async () => {
    const context = await phone(browser)
    const page = await context.newPage()
    await page.goto(url)
    await page.getByRole('combobox', { name: 'Language' }).selectOption({ label: 'Français' })
    await page.getByRole('heading', { name: messagesOf('fr')['front.title'] ?? 'no such message' }).waitFor()
    expect(await page.locator('html').getAttribute('lang')).toBe('fr')
    await page.reload()
    await page.getByRole('heading', { name: messagesOf('fr')['front.title'] ?? 'no such message' }).waitFor()
    await page.getByRole('combobox').selectOption({ label: 'English' })
    await page.getByRole('heading', { name: 'Plans on this phone' }).waitFor()
    await context.close()
  })

  it('is the phone’s own where we have it', async () => {
    const context = await phone(browser, { locale: 'sw-TZ' })
    const page = await context.newPage()
    await page.goto(url)
    await page.getByRole('heading', { name: messagesOf('sw')['front.title'] ?? 'no such message' }).waitFor()
    expect(await page.locator('html').getAttribute('lang')).toBe('sw')
    await context.close()
  })
})
