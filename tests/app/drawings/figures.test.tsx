import { render, screen } from '@testing-library/react'
import { planWords } from '../../../src/app/words/en/plan-words.ts'
import { WordsProvider } from '../../../src/app/words/use-words.tsx'
import { addWords } from '../../../src/app/words/catalogue.ts'
import { describe, expect, it } from 'vitest'
import { SheetDrawing } from '../../../src/app/drawings/CuttingDrawing.tsx'
import { LevelsDrawing } from '../../../src/app/drawings/SettingOutDrawing.tsx'
import { cutSheets } from '../../../src/core/cutting/cut-sheets.ts'
import { settingOut } from '../../../src/core/geometry/setting-out.ts'
import { placedFlags } from '../../../src/app/drawings/flags.ts'
import { InsideDrawing } from '../../../src/app/drawings/InsideDrawing.tsx'
import { KilnDrawing } from '../../../src/app/drawings/KilnDrawing.tsx'
import { paperFor } from '../../../src/app/drawings/paper.ts'
import type { Writing } from '../../../src/app/drawings/writing.ts'
import type { Drawing } from '../../../src/core/documents/drawings/drawing.ts'
import { kilnOf } from '../../core/documents/drawings/drawings.ts'

addWords(planWords)

const worked2 = kilnOf(2, 'hollow-450-150-225')

/** Boxes of the figures, with digits 0.5 of their height wide: a little narrower than any face the product uses, so that a hit is a real one. */
function figureBoxes(svg: Element) {
  return [...svg.querySelectorAll('text:not(.flag)')].map((text) => {
    const height = text.classList.contains('tiny') ? 12.5 : text.classList.contains('big') ? 18 : 15
    const narrow = text.textContent.match(/[\s′″/.,]/g)?.length ?? 0
    const width = (text.textContent.length - narrow / 2) * height * 0.5
    const [x, y] = [Number(text.getAttribute('x')), Number(text.getAttribute('y'))]
    const anchor = text.getAttribute('text-anchor')
    const from = anchor === 'middle' ? -width / 2 : anchor === 'end' ? -width : 0
    const isTurned = text.getAttribute('transform')?.startsWith('rotate(-90') === true
    return isTurned
      ? { text: text.textContent, x0: x - height * 0.7, x1: x, y0: y - from - width, y1: y - from }
      : { text: text.textContent, x0: x + from, x1: x + from + width, y0: y - height * 0.7, y1: y }
  })
}

type Sides = 'mm' | 'cm' | 'm' | 'ft-in'
const LENGTHS: readonly Sides[] = ['mm', 'm', 'ft-in']
const show = (length: Sides) => ({ length, mass: 'kg', currency: { code: 'XOF', digits: 0 } }) as const

describe.each([1, 2, 3, 4, 5, 6, 7, 8])('figures of %i chambers', (count) => {
  it.each(
    ['hollow-450-150-225', 'brick-215-102-65'].flatMap((unitKey) =>
      LENGTHS.map((length) => [unitKey, length] as const),
    ),
  )('in %s and %s never cover each other, and stay on the sheet', (unitKey, length) => {
    const worked = kilnOf(count, unitKey)
    const covered: string[] = []
    for (const view of ['plan', 'front', 'section'] as const) {
      const { container, unmount } = render(
        <WordsProvider show={show(length)}>
          <KilnDrawing view={view} worked={worked} findings={[]} />
        </WordsProvider>,
      )
      const svg = container.querySelector('svg.ink')
      if (svg === null) throw new Error('no drawing')
      const boxes = figureBoxes(svg)
      expect(boxes.length).toBeGreaterThan(3)
      for (const [index, one] of boxes.entries()) {
        if (one.x0 < 0 || one.x1 > 320) covered.push(`${view}: ${one.text} runs off the sheet`)
        for (const other of boxes.slice(index + 1))
          if (one.x0 < other.x1 && other.x0 < one.x1 && one.y0 < other.y1 && other.y0 < one.y1)
            covered.push(`${view}: ${one.text} on ${other.text}`)
      }
      unmount()
    }
    expect(covered).toEqual([])
  })
})

describe('a drawing', () => {
  it('says its sizes to those who hear it', () => {
    render(<KilnDrawing view="plan" worked={kilnOf(2, 'hollow-450-150-225')} findings={[]} />)
    // 2 × 680 + 3 × 150 = 1810 and 680 + 2 × 150 = 980, by hand.
    expect(screen.getByRole('img', { name: /1.?810.mm by 980.mm outside, 2 chambers 680.mm square/ })).toBeVisible()
  })

  it('that builds up starts finished and goes down course by course', async () => {
    const worked = kilnOf(1, 'hollow-450-150-225')
    const last = worked.layout.courses.at(-1)?.index ?? 0
    const { container } = render(<InsideDrawing worked={worked} findings={[]} />)
    const slider = screen.getByRole('slider')
    expect(slider).toHaveValue(String(last))
    expect(container.querySelector('.k-flame')).not.toBeNull()
    const before = container.querySelectorAll('svg.ink path').length
    screen.getByRole('button', { name: 'One course down' }).click()
    await screen.findByText(`Course ${last - 1} of ${last}`, { exact: false })
    expect(container.querySelector('.k-flame')).toBeNull()
    expect(container.querySelectorAll('svg.ink path').length).toBeLessThan(before)
  })
})

describe('what a mason checks', () => {
  it('shows every corner with how low it is', () => {
    const pegs = settingOut(worked2.geometry, worked2.site.facing, 0).pegs.filter(({ id }) => 'ABCD'.includes(id))
    const corners = pegs.map(({ id }, index) => ({ peg: id, lowByM: index * 0.004, jointM: 0.01, raiseM: 0 }))
    const { container } = render(<LevelsDrawing pegs={pegs} corners={corners} />)
    const texts = [...container.querySelectorAll('text')].map((text) => text.textContent.replaceAll('\u00a0', ' '))
    expect(texts).toEqual(expect.arrayContaining(['0 mm', '4 mm', '8 mm', '12 mm', 'A', 'B', 'C', 'D']))
  })

  it('finds the cut pieces on the sheet', () => {
    const [sheet] = cutSheets({
      pieces: [{ lengthM: 0.78, widthM: 0.78, count: 3 }],
      sheets: [{ key: 'a', lengthM: 2.44, widthM: 1.22, priceMinor: 1 }],
      kerfM: 0.003,
    }).sheets
    if (sheet === undefined) throw new Error('nothing cut')
    render(<SheetDrawing sheet={sheet} />)
    expect(screen.getByRole('img', { name: /One sheet of 2440.mm by 1220.mm, each cut into 3 pieces/ })).toBeVisible()
  })
})

describe('flags', () => {
  const plain: Writing = { figure: String, alone: String, say: (key) => key }
  const drawing = (places: readonly (readonly [number, number])[]): Drawing => ({
    box: { x0M: 0, y0M: 0, x1M: 2, y1M: 1 },
    shapes: places.map((at, index) => ({ kind: 'flag', at, level: 'caution', number: index + 1 })),
    label: { key: 'x', args: {} },
  })

  it('that would cover each other become one, with the first number', () => {
    const near = drawing([
      [1, 0.5],
      [1.02, 0.5],
      [1.03, 0.52],
      [0.2, 0.5],
    ])
    const placed = placedFlags(near.shapes, paperFor(near, plain))
    expect(placed.map(({ number, more }) => [number, more])).toEqual([
      [1, true],
      [4, false],
    ])
  })

  it('are six at the most', () => {
    const many = drawing(Array.from({ length: 12 }, (_, k) => [(k % 6) * 0.4, k < 6 ? 0.1 : 0.9] as const))
    expect(placedFlags(many.shapes, paperFor(many, plain))).toHaveLength(6)
  })
})
