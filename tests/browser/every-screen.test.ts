import { beforeEach, describe, expect, it } from 'vitest'
import { accessibilityFaults, COLOURS, tooSmall, untold } from './accessibility.ts'
import { whatDoesNotFit } from './fit.ts'
import { openExample, page, takeInHand, url } from './in-hand.ts'
import { addresses, goTo, settled, type Examples } from './screens.ts'
import { states } from './states.ts'

takeInHand({ reducedMotion: 'reduce', timeoutMs: 10_000 })

let examples: Examples
const id = () => page.url().split('/')[5] ?? ''

type Look = () => Promise<readonly string[]>
type Faults = string[]

/** What is wrong with each address of the app. */
async function atEveryAddress(look: Look): Promise<Faults> {
  const faults: string[] = []
  for (const [name, address] of addresses(examples)) {
    await goTo(page, address)
    const head = name.includes('/') ? page.getByRole('dialog') : page.getByRole('heading', { level: 1 })
    await head.first().waitFor()
    await settled(page)
    faults.push(...(await look()).map((fault) => `${name}: ${fault}`))
  }
  return faults
}

/** What is wrong with each state of a screen besides its first. */
async function inEveryState(look: Look): Promise<Faults> {
  const faults: string[] = []
  for (const [name, reach] of states(page, examples)) {
    await goTo(page, '#/trust')
    await reach()
    faults.push(...(await look()).map((fault) => `${name}: ${fault}`))
  }
  return faults
}

const light = (name: string) =>
  page.evaluate((chosen) => {
    document.documentElement.dataset['theme'] = chosen
  }, name)

/** What moves, though this reader asked for stillness. */
const moving = () =>
  page.evaluate(() =>
    document.getAnimations().flatMap((one) => (one.playState === 'running' ? [`moves: ${one.id}`] : [])),
  )

/** In each light what axe finds: all in the first, colours in the others; and what is too small for a thumb. */
async function soundInEveryLight(): Promise<Faults> {
  const faults = [
    ...(await accessibilityFaults(page)),
    ...(await tooSmall(page)),
    ...(await moving()),
    ...(await untold(page)),
  ]
  for (const name of ['dark', 'sun']) {
    await light(name)
    faults.push(...(await accessibilityFaults(page, COLOURS)).map((fault) => `${name}, ${fault}`))
  }
  await light('light')
  return faults
}

const SIZES = [
  [320, 568, '100%'],
  [320, 640, '200%'],
  [740, 360, '100%'],
  [768, 1024, '100%'],
  [1280, 800, '100%'],
] as const

/** At each size what sticks out at the side or is cut. */
async function fitsAtEverySize(): Promise<Faults> {
  const faults: string[] = []
  for (const [width, height, size] of SIZES) {
    await page.setViewportSize({ width, height })
    await page.evaluate((text) => {
      document.documentElement.style.fontSize = text
    }, size)
    await settled(page)
    faults.push(
      ...(await whatDoesNotFit(page)).map((fault) => `${String(width)} × ${String(height)}, ${size}: ${fault}`),
    )
  }
  return faults
}

describe.each([
  ['is sound in every light for those who hear, see or press badly', soundInEveryLight],
  ['fits at every size and with large text', fitsAtEverySize],
] as const)('every screen %s', (_, look) => {
  beforeEach(async () => {
    await openExample(/One chamber/)
    const one = id()
    await page.goto(`${url}/#/`)
    await openExample(/Two chambers/)
    examples = { one, two: id() }
  })

  it('at its address', { timeout: 300_000 }, async () => {
    expect(await atEveryAddress(look)).toEqual([])
  })

  it('in each of its states', { timeout: 300_000 }, async () => {
    expect(await inEveryState(look)).toEqual([])
  })
})

it.each([
  ['sound', soundInEveryLight],
  ['fitting', fitsAtEverySize],
] as const)('the front page without a plan is %s', async (_, look) => {
  await settled(page)
  expect(await look()).toEqual([])
})
