import { act, render, screen, within } from '@testing-library/react'
import { afterEach, describe, expect, it } from 'vitest'
import { Suspense } from 'react'
import { evidence } from '../../../src/app/state/evidence.ts'
import { TrustPage } from '../../../src/app/screens/trust/TrustPage.tsx'
import { addWords, hasWord } from '../../../src/app/words/catalogue.ts'
import { planWords } from '../../../src/app/words/en/plan-words.ts'
import { DEFAULT_SHOW } from '../../../src/app/words/show.ts'
import { WordsProvider } from '../../../src/app/words/use-words.tsx'

addWords(planWords)
afterEach(() => {
  document.body.replaceChildren()
})

const { checks, disagreements, unsourced } = await evidence()

const page = async () => {
  await act(async () => {
    render(
      <WordsProvider show={DEFAULT_SHOW}>
        <Suspense>
          <TrustPage />
        </Suspense>
      </WordsProvider>,
    )
    await evidence()
  })
  return screen.getByRole('main')
}

describe('how far the numbers can be trusted', () => {
  it('has words for all that is checked, disagreed on, or without a source', async () => {
    await page()
    const keys = [
      ...checks.flatMap(({ id, place, why }) => [`check.${id}`, `trust.place.${place}`, `trust.why.${why}`]),
      ...disagreements.flatMap(({ id }) => [`disagree.${id}`, `disagree.${id}.text`]),
      ...unsourced.map(({ id }) => `working.${id}`),
    ]
    expect(keys.filter((key) => !hasWord(key))).toEqual([])
  })

  it('shows the expected figure with all its digits, how near ours comes, why, and the source', async () => {
    const line = within(await page())
      .getByText('Wall in plan, two chambers over 1.84 × 1.00 m')
      .closest('li')
    expect(line?.textContent).toContain('0.9152 m²')
    expect(line?.textContent).toContain('ours the same')
    expect(line?.textContent).toContain('Zinsou & Wentholt')
    const draught = within(screen.getByRole('main')).getByText('Draught of 3 m of warm air').closest('li')
    expect(draught?.textContent).toContain('4.85 Pa, ours within 0.005 Pa')
  })

  it('lists every figure that no print gives, apart for practice and memory', async () => {
    const count = async (name: string) =>
      within(await page())
        .getByRole('heading', { name })
        .closest('section')
        ?.querySelectorAll('li').length
    expect(await count('From memory')).toBe(unsourced.filter(({ kind }) => kind === 'memory').length)
  })
})
