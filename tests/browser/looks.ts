import type { Page } from 'playwright-core'
import { accessibilityFaults, COLOURS, tooSmall, untold } from './accessibility.ts'
import { whatDoesNotFit } from './fit.ts'
import { resized, settled } from './screens.ts'

const light = (page: Page, name: string) =>
  page.evaluate((chosen) => {
    document.documentElement.dataset['theme'] = chosen
  }, name)

/** What moves, though this reader asked for stillness. */
const moving = (page: Page) =>
  page.evaluate(() =>
    document.getAnimations().flatMap((one) => (one.playState === 'running' ? [`moves: ${one.id}`] : [])),
  )

/** In each light what axe finds: all in the first, colours in the others; and what is too small for a thumb. */
async function soundInEveryLight(page: Page): Promise<string[]> {
  const faults = [
    ...(await accessibilityFaults(page)),
    ...(await tooSmall(page)),
    ...(await moving(page)),
    ...(await untold(page)),
  ]
  for (const name of ['dark', 'sun']) {
    await light(page, name)
    faults.push(...(await accessibilityFaults(page, COLOURS)).map((fault) => `${name}, ${fault}`))
  }
  await light(page, 'light')
  return faults
}

const HAND = { width: 360, height: 740 }
const SIZES = [
  [320, 568, '100%'],
  [320, 640, '200%'],
  [740, 360, '100%'],
  [768, 1024, '100%'],
  [1280, 800, '100%'],
] as const

async function sized(page: Page, width: number, height: number, text: string): Promise<void> {
  await page.setViewportSize({ width, height })
  await page.evaluate((size) => {
    document.documentElement.style.fontSize = size
  }, text)
}

/** At each size what sticks out at the side or is cut. */
async function fitsAtEverySize(page: Page): Promise<string[]> {
  const faults: string[] = []
  for (const [width, height, text] of SIZES) {
    await sized(page, width, height, text)
    await (width < 768 ? resized(page) : settled(page)) // a wide page is laid out anew, and may fetch what that takes
    faults.push(
      ...(await whatDoesNotFit(page)).map((fault) => `${String(width)} × ${String(height)}, ${text}: ${fault}`),
    )
  }
  await sized(page, HAND.width, HAND.height, '')
  return faults
}

/**
 * What is wrong with the page as it stands for those who hear, see or press badly, in every light; and what does not fit at every size and
 * with large text. It is in one's hand before and after.
 */
export const looksWrong = async (page: Page): Promise<string[]> => [
  ...(await soundInEveryLight(page)),
  ...(await fitsAtEverySize(page)),
]
