import { createRequire } from 'node:module'
import { readFile } from 'node:fs/promises'
import type { AxeResults, RunOptions } from 'axe-core'
import type { Page } from 'playwright-core'

const script = readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

/** What axe finds wrong on the page, one line each: the rule, then where. */
export async function accessibilityFaults(page: Page, options: RunOptions = {}): Promise<string[]> {
  await page.evaluate(await script)
  const results = await page.evaluate(
    (given) => (window as unknown as { axe: { run(options: RunOptions): Promise<AxeResults> } }).axe.run(given),
    options,
  )
  if (results.passes.length === 0) throw new Error('axe looked at nothing')
  return results.violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(' ')).join(', ')}`)
}
