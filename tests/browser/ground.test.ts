import { beforeEach, describe, expect, it } from 'vitest'
import { accessibilityFaults } from './accessibility.ts'
import { goOffline, openExample, page, takeInHand } from './in-hand.ts'

takeInHand({ hasTouch: true })
let base: string
beforeEach(async () => {
  await openExample(/One chamber/)
  base = page.url()
  await goOffline()
})

const open = async (card: string) => {
  await page.goto(`${base}/${card}`)
  await page.getByRole('dialog').waitFor()
}
const type = async (name: string, text: string) => {
  const box = page.getByRole('textbox', { name: new RegExp(`^${name}`) })
  await box.fill(text)
  await box.press('Enter')
}
const hears = async (text: RegExp): Promise<boolean> => {
  await page.getByRole('dialog').getByText(text).first().waitFor()
  return true
}
const value = (name: string) => page.getByRole('textbox', { name: new RegExp(`^${name}`) }).inputValue()

describe('the ground, offline on a phone', () => {
  it('finds the soil by hand, asking only for what decides, and keeps the answers', async () => {
    await open('ground')
    await page.getByText('Test it by hand, step by step').click()
    await page.getByRole('radio', { name: 'Natural ground, never filled' }).check()
    await page.getByRole('radio', { name: 'Gritty and falls apart' }).check()
    // Sand: the thumb tells nothing, the picket does.
    expect(await page.getByRole('heading', { name: /A thumb/ }).count()).toBe(0)
    await type('The picket goes in', '250')
    expect(await hears(/Loose sand\. The picket goes in/)).toBe(true)
    await expect.poll(() => page.getByRole('radio', { name: /^Loose sand/ }).isChecked()).toBe(true)
    await type('The picket goes in', '1500')
    expect(await hears(/Between 0\smm and 1000\smm/)).toBe(true)
    expect(await value('The picket goes in')).toBe('1500')
    expect(await accessibilityFaults(page)).toEqual([])
    await page.getByText(/^Saved on this phone/).waitFor({ state: 'attached' })
    await page.reload()
    await expect.poll(() => page.getByRole('radio', { name: 'Gritty and falls apart' }).isChecked()).toBe(true)
  })

  it('says not to build on filled ground without advice', async () => {
    await open('ground')
    await page.getByText('Test it by hand, step by step').click()
    await page.getByRole('radio', { name: 'Filled, a heap or an old pit' }).check()
    expect(await hears(/Do not build without advice/)).toBe(true)
    expect(await hears(/Do not build here without advice: filled ground/)).toBe(true)
  })

  it('finds the slope from pegs, tells a half-read peg and ground too steep, and loses nothing typed', async () => {
    await open('ground')
    await page.getByText('Find the slope from pegs').click()
    await type('Down at the front left peg, A', '500')
    await type('Down at a peg to the right, B', '620')
    expect(await hears(/wants both its height and how far/)).toBe(true)
    // 120 mm lower over 2 m is a fall of 6 in 100.
    await type('From A to B', '2000')
    await expect.poll(() => value('Rise of the ground to the right')).toBe('−6')
    await type('Down at a peg to the right, B', '1200')
    expect(await hears(/steeper than one in four/)).toBe(true)
    // 700 mm over 2 m is 35 in 100.
    expect(await hears(/The ground falls 35 in 100/)).toBe(true)
    expect(await value('Down at a peg to the right, B')).toBe('1200')
    await type('Rise of the ground to the back', '30')
    expect(await hears(/cut a level terrace first/)).toBe(true)
    expect(await value('Rise of the ground to the back')).toBe('30')
  })

  it('turns the front to the wind, and tells the needle from true north', async () => {
    await open('place')
    await page.getByRole('combobox', { name: 'Wind by day, from' }).selectOption({ label: 'east' })
    await type('Wind by day, from, in degrees from true north', '100')
    expect(await hears(/By day the wind blows into the openings/)).toBe(true)
    await type('Compass needle east of true north', '4')
    // The needle points 4° east of true north, so it reads 4° less.
    await page.getByRole('button', { name: /The same on the compass: 96/ }).waitFor()
    await type('Nearest thatch', '5')
    expect(await hears(/Thatch is .* away: keep at least/)).toBe(true)
    expect(await accessibilityFaults(page)).toEqual([])
  })
})

describe('a figure on a drawing', () => {
  it('opens its working with a thumb and from the keyboard', async () => {
    await page.goto(base)
    const figure = page
      .getByRole('main')
      .getByRole('button', { name: /^Length over all 1070/ })
      .first()
    await figure.click()
    const sheet = page.getByRole('dialog')
    await sheet.getByRole('heading', { name: 'Length over all' }).waitFor()
    await sheet.getByRole('button', { name: 'Close the working' }).click()
    await figure.focus()
    await page.keyboard.press('Enter')
    await sheet.getByRole('heading', { name: 'Length over all' }).waitFor()
    await sheet.getByRole('button', { name: 'Close the working' }).click()
    expect(await accessibilityFaults(page)).toEqual([])
  })
})
