import { render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { beforeAll, describe, expect, it, vi } from 'vitest'
import { formulaInNumbers, formulaInSymbols } from '../../../src/app/screens/working/formula.ts'
import { WorkingSheet } from '../../../src/app/screens/working/WorkingSheet.tsx'
import '../../../src/app/words/add-plan-words.ts'
import { cited, counted, derive, sumOf, typed, type Derived } from '../../../src/core/basics/derived.ts'

const plain = (text: string | null) => (text ?? '').replaceAll('\u00a0', ' ')

const side = typed('clear-side', 'm', 0.68, 'chambers.clearSideM')
const wall = typed('wall', 'm', 0.15, 'walls.unit.widthM')
const depth = derive('outside-depth', 'm', 'a + 2·t', { a: side, t: wall }, (v) => v.a + 2 * v.t)
const nothing = { onOpen: () => {}, onBack: () => {}, onClose: () => {}, onChange: () => {} }

beforeAll(() => {
  // jsdom has dialogs without their modal behaviour; whether it is modal is looked at in a real browser.
  Object.assign(HTMLDialogElement.prototype, {
    showModal(this: HTMLDialogElement) {
      this.open = true
    },
    close(this: HTMLDialogElement) {
      this.open = false
    },
  })
})

describe('a formula', () => {
  it('is written with the signs of the hand', () => {
    expect(plain(formulaInSymbols('sqrt(L^2 + D^2) · 3 / 2'))).toBe('root of (L² + D²) × 3 ÷ 2')
    expect(plain(formulaInSymbols('ceil(D / (s · F))'))).toBe('rounded up (D ÷ (s × F))')
  })

  it('has each number in its symbol’s place, and symbols in numbers untouched', () => {
    const show = ({ value, unit }: { value: number; unit: string }) => `${String(value)} ${unit}`
    expect(plain(formulaInNumbers(depth, show))).toBe('0.68 m + 2 × 0.15 m')
    const tricky = derive(
      'x',
      '1',
      'a · ab + ceil(a)',
      { a: counted('a', 'm', 1), ab: counted('ab', 'm', 2) },
      (v) => v.a * v.ab,
    )
    expect(plain(formulaInNumbers(tricky, show))).toBe('1 m × 2 m + rounded up (1 m)')
  })
})

describe('the working of a number', () => {
  it('shows name, formula, the formula in numbers and every number it is made of', async () => {
    const onOpen = vi.fn<(derived: Derived) => void>()
    render(<WorkingSheet path={[depth]} {...nothing} onOpen={onOpen} />)
    expect(plain(screen.getByRole('dialog').textContent)).toContain('a + 2 × t')
    expect(plain(screen.getByRole('dialog').textContent)).toContain('680 mm + 2 × 150 mm = 980 mm')
    await userEvent.click(screen.getByRole('button', { name: /150/ }))
    expect(onOpen).toHaveBeenCalledWith(wall)
  })

  it('leads from a typed number to the field where it is typed', async () => {
    const onChange = vi.fn<(field: string) => void>()
    const onBack = vi.fn<() => void>()
    render(<WorkingSheet path={[depth, side]} {...nothing} onChange={onChange} onBack={onBack} />)
    expect(screen.getByText('You typed this.')).toBeVisible()
    await userEvent.click(screen.getByRole('button', { name: 'Change it' }))
    expect(onChange).toHaveBeenCalledWith('chambers.clearSideM')
    await userEvent.click(screen.getByRole('button', { name: 'Back one step' }))
    expect(onBack).toHaveBeenCalledOnce()
  })

  it('names its source, or says that there is none', () => {
    const { rerender } = render(<WorkingSheet path={[cited('x', 'm', 1, 'ilo-1982')]} {...nothing} />)
    expect(screen.getByText(/International Labour Office, Small-scale processing of fish, 1982/)).toBeVisible()
    rerender(<WorkingSheet path={[cited('x', 'm', 1, 'common-practice')]} {...nothing} />)
    expect(screen.getByText('Common practice. No published source.')).toBeVisible()
    rerender(<WorkingSheet path={[cited('x', 'm', 1, 'memory')]} {...nothing} />)
    expect(screen.getByText(/From memory/)).toBeVisible()
  })

  it('shows a sum as a column with its total, and a share in per cent as it was typed', () => {
    const parts = [counted('one', 'money', 300), counted('two', 'money', 450)]
    const { rerender } = render(<WorkingSheet path={[sumOf('cost.lines', 'money', parts)]} {...nothing} />)
    const rows = screen.getAllByRole('listitem')
    expect(rows).toHaveLength(3)
    expect(rows[2]).toHaveTextContent('750')
    rerender(<WorkingSheet path={[typed('waste.units', '1', 0.05, 'waste.units')]} {...nothing} />)
    expect(plain(screen.getByRole('dialog').textContent)).toContain('5 %')
  })
})
