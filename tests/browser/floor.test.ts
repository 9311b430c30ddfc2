import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, inject, it } from 'vitest'
import { complaints, phone } from './browser.ts'
import { browser, serveApp, url } from './served.ts'

/**
 * What the oldest supported browsers (Chrome and WebView 109, Safari 15.4, Firefox 115) do not all have. Versions: MDN browser-compat-data,
 * from memory. `toSorted` and `toReversed` (Chrome 110, Safari 16) are given by src/device/older-browsers.ts.
 */
const BEYOND: readonly (readonly [string, RegExp])[] = [
  ['Array.prototype.toSpliced', /\.toSpliced\(/],
  ['Array.fromAsync', /Array\.fromAsync/],
  ['Object.groupBy', /(Object|Map)\.groupBy\(/],
  ['Promise.withResolvers', /Promise\.withResolvers/],
  ['AbortSignal.timeout', /AbortSignal\.(timeout|any)\(/],
  ['String.isWellFormed', /\.(isWellFormed|toWellFormed)\(/],
  ['lookbehind in a regular expression', /\(\?<[=!]/],
  ['v flag of a regular expression', /\/[dgimsuy]*v[dgimsuy]*\.(test|exec)\(/],
  ['popover', /\.showPopover\(/],
  ['Intl.Locale.getTextInfo', /\.getTextInfo\(/],
  ['static block of a class', /\bstatic\s*\{/],
]
const BEYOND_CSS: readonly (readonly [string, RegExp])[] = [
  ['color-mix()', /color-mix\(/],
  ['@container', /@container/],
  ['nesting', /[{;]\s*&/],
  ['subgrid', /subgrid/],
  ['text-wrap', /text-wrap:\s*(balance|pretty)/],
]

serveApp('once')

const built = (ending: string) => {
  const folder = path.join(inject('appA'), 'assets')
  return readdirSync(folder)
    .filter((name) => name.endsWith(ending))
    .map((name) => [name, readFileSync(path.join(folder, name), 'utf8')] as const)
}

describe('the oldest browsers', () => {
  it('are asked for nothing that they do not have', () => {
    const found = (files: ReturnType<typeof built>, list: typeof BEYOND) =>
      files.flatMap(([name, text]) => list.flatMap(([what, sign]) => (sign.test(text) ? [`${name}: ${what}`] : [])))
    expect(built('.js').length).toBeGreaterThan(5)
    expect([...found(built('.js'), BEYOND), ...found(built('.css'), BEYOND_CSS)]).toEqual([])
  })

  it('get a plan worked out though they lack the newest methods of lists', async () => {
    const context = await phone(browser)
    await context.addInitScript(() => {
      for (const name of ['toSorted', 'toReversed', 'toSpliced', 'with']) Reflect.deleteProperty(Array.prototype, name)
    })
    const page = await context.newPage()
    await page.goto(url)
    await page.getByRole('button', { name: 'Example' }).click()
    await page.getByRole('button', { name: /Two chambers/ }).click()
    await page.getByRole('link', { name: /^Walls/ }).waitFor()
    await page.goto(page.url().replace(/plan$/, 'buy'))
    await page
      .getByRole('button', { name: /^To buy, in all: / })
      .first()
      .waitFor()
    expect(complaints(context)).toEqual([])
    await context.close()
  })
})
