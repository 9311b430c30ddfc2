import type { Page } from 'playwright-core'
import { goTo, settled, type Examples } from './screens.ts'

const press = async (page: Page, name: RegExp | string, role: 'button' | 'link' | 'radio' = 'button') => {
  const found = page.getByRole(role, { name }).first()
  await (role === 'radio' ? found.check({ force: true }) : found.click())
  await settled(page)
}
const type = async (page: Page, name: RegExp, text: string) => {
  const box = page.getByRole('textbox', { name }).first()
  await box.fill(text)
  await box.press('Enter')
  await settled(page)
}
const unfold = async (page: Page) => {
  await page.evaluate(() => {
    for (const one of document.querySelectorAll('details')) one.open = true
  })
  await settled(page)
}

/** What a screen can look like besides how it first opens: something opened over it, refused, found wrong, empty, undone. */
export const states = (page: Page, { one, two }: Examples): readonly (readonly [string, () => Promise<void>])[] => {
  const at = (address: string) => goTo(page, address)
  return [
    [
      'front page, examples opened',
      async () => {
        await at('#/')
        await press(page, 'Example')
      },
    ],
    [
      'tools of a plan',
      async () => {
        await at(`#/plan/${two}/plan`)
        await press(page, /^More for/)
      },
    ],
    [
      'working of a figure, two steps down',
      async () => {
        await at(`#/plan/${one}/buy`)
        await press(page, /^To buy, in all: /)
        await press(page, /^All lines/)
      },
    ],
    ...(['Front', 'Section', 'Inside'] as const).map(
      (view) =>
        [
          `drawing: ${view}`,
          async () => {
            await at(`#/plan/${two}/plan`)
            const choice = page.getByRole('radio', { name: view, exact: true })
            if ((await choice.count()) > 0) await choice.check({ force: true })
            await settled(page)
          },
        ] as const,
    ),
    [
      'drawings over the whole screen',
      async () => {
        await at(`#/plan/${two}/plan`)
        await press(page, /^Open over the whole screen/)
      },
    ],
    [
      'a figure refused',
      async () => {
        await at(`#/plan/${two}/plan/chambers`)
        await type(page, /Clear side of a chamber/, '5000')
      },
    ],
    [
      'a figure of a new plan refused',
      async () => {
        await at('#/new')
        await type(page, /Fresh fish a day/, 'many')
        await unfold(page)
      },
    ],
    [
      'a price refused',
      async () => {
        await at(`#/plan/${one}/buy/item:cement`)
        await type(page, /Price of one lot/, 'dear')
      },
    ],
    [
      'a firing refused',
      async () => {
        await at(`#/plan/${two}/run/log:example-firing-04`)
        await type(page, /^Wood burnt/, '-3')
      },
    ],
    [
      'all of the ground unfolded',
      async () => {
        await at(`#/plan/${two}/plan/ground`)
        await unfold(page)
      },
    ],
    [
      'a problem in its card',
      async () => {
        await at(`#/plan/${two}/plan/ground`)
        await press(page, /^Mud, peat/, 'radio')
      },
    ],
    [
      'a problem of the plan',
      async () => {
        await at(`#/plan/${two}/plan`)
      },
    ],
    [
      'every step of the work unfolded',
      async () => {
        await at(`#/plan/${one}/build`)
        await unfold(page)
      },
    ],
    [
      'a course half laid',
      async () => {
        await at(`#/plan/${one}/build/course`)
        await press(page, /^Laid: unit/)
      },
    ],
    [
      'tapes that cannot be',
      async () => {
        await at(`#/plan/${one}/build/tapes`)
        for (const [name, tape] of [
          ['A to B', '1070'],
          ['B to C', '1070'],
          ['A to C', '1900'],
          ['C to D', 'long'],
        ] as const)
          await type(page, new RegExp(`^${name}`), tape)
      },
    ],
    [
      'kilns within the money, the search stopped',
      async () => {
        await at(`#/plan/${one}/plan/within`)
        const stop = page.getByRole('dialog').getByRole('button', { name: 'Stop' })
        await stop.click({ timeout: 2000 }).catch(() => {}) // it may have ended by itself
        await unfold(page)
      },
    ],
    [
      'run, the day step by step',
      async () => {
        await at(`#/plan/${two}/run`)
        await unfold(page)
      },
    ],
    [
      'run without a log',
      async () => {
        await at(`#/plan/${one}/run/log`)
      },
    ],
    [
      'what changed, after a change',
      async () => {
        await at(`#/history/${two}`)
        await page.getByRole('heading', { level: 1 }).waitFor()
        await settled(page)
      },
    ],
    [
      'a trade word explained',
      async () => {
        await at(`#/plan/${two}/plan/walls`)
        await page.getByRole('dialog').locator('.term').first().click()
        await settled(page)
      },
    ],
    [
      'erasing everything',
      async () => {
        await at('#/settings')
        await press(page, 'Erase everything on this phone')
      },
    ],
    [
      'joining an office',
      async () => {
        await at('#/settings')
        await press(page, 'Join an office')
      },
    ],
    [
      'a plan that is not here',
      async () => {
        await at('#/plan/nowhere/plan')
      },
    ],
    [
      'a plan deleted, with its way back',
      async () => {
        await at('#/')
        await press(page, /^More for/)
        await press(page, 'Delete')
      },
    ],
  ]
}
