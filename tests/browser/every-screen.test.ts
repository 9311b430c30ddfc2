import { expect, it } from 'vitest'
import { openExamples, page, takeInHand } from './in-hand.ts'
import { looksWrong } from './looks.ts'
import { addresses, goTo, settled } from './screens.ts'

takeInHand({ reducedMotion: 'reduce', timeoutMs: 10_000 })

it('every screen at its address is sound in every light and fits at every size', { timeout: 300_000 }, async () => {
  const faults: string[] = []
  for (const [name, address] of addresses(await openExamples())) {
    await goTo(page, address, name.includes('/') ? 'dialog' : 'heading')
    faults.push(...(await looksWrong(page)).map((fault) => `${name}: ${fault}`))
  }
  expect(faults).toEqual([])
})

it('the front page without a plan is sound and fits', async () => {
  await settled(page)
  expect(await looksWrong(page)).toEqual([])
})
