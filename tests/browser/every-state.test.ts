import { expect, it } from 'vitest'
import { openExamples, page, takeInHand } from './in-hand.ts'
import { looksWrong } from './looks.ts'
import { goTo } from './screens.ts'
import { states } from './states.ts'

takeInHand({ reducedMotion: 'reduce', timeoutMs: 10_000 })

it(
  'every screen in each of its states is sound in every light and fits at every size',
  { timeout: 300_000 },
  async () => {
    const faults: string[] = []
    for (const [name, reach] of states(page, await openExamples())) {
      await goTo(page, '#/trust')
      await reach()
      faults.push(...(await looksWrong(page)).map((fault) => `${name}: ${fault}`))
    }
    expect(faults).toEqual([])
  },
)
