import { render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { useState } from 'react'
import { describe, expect, it, vi } from 'vitest'
import { Stepper } from '../../../src/app/parts/Stepper.tsx'

const text = {
  show: (value: number) => ({ figure: String(Math.round(value * 1000)), unit: 'mm' }),
  read: (typed: string) => (/^\d+(\.\d+)?$/.test(typed) ? Number(typed) / 1000 : null),
  notANumber: 'not a number',
  outside: 'between 400 mm and 2000 mm',
  less: 'less',
  more: 'more',
  atLeast: '400 mm is the least',
  atMost: '2000 mm is the most',
}

function Kept({
  first,
  onChange,
  refuse,
}: {
  first: number
  onChange?: (value: number) => void
  refuse?: (value: number) => string | null
}) {
  const [value, setValue] = useState(first)
  return (
    <Stepper
      name="Clear side"
      value={value}
      min={0.4}
      max={2}
      step={0.01}
      text={text}
      help="inside"
      {...(refuse && { refuse })}
      onChange={(next) => {
        setValue(next)
        onChange?.(next)
      }}
    />
  )
}

const box = () => screen.getByRole('textbox', { name: /Clear side/ })

describe('a stepper', () => {
  it('takes what is typed when it is left, in metres', async () => {
    const onChange = vi.fn<(value: number) => void>()
    render(<Kept first={0.68} onChange={onChange} />)
    await userEvent.clear(box())
    await userEvent.type(box(), '700')
    await userEvent.tab()
    expect(onChange).toHaveBeenLastCalledWith(0.7)
    expect(box()).toHaveValue('700')
  })

  it('refuses beside the field with the limits, keeps what was typed and leaves the plan alone', async () => {
    const onChange = vi.fn<(value: number) => void>()
    render(<Kept first={0.68} onChange={onChange} />)
    await userEvent.clear(box())
    await userEvent.type(box(), '3200{Enter}')
    expect(screen.getByRole('alert')).toHaveTextContent('between 400 mm and 2000 mm')
    expect(box()).toHaveValue('3200')
    expect(box()).toBeInvalid()
    expect(onChange).not.toHaveBeenCalled()
    await userEvent.clear(box())
    await userEvent.type(box(), 'wide{Enter}')
    expect(screen.getByRole('alert')).toHaveTextContent('not a number')
    expect(box()).toHaveValue('wide')
  })

  it('goes back to the plan’s value on Escape', async () => {
    render(<Kept first={0.68} />)
    await userEvent.clear(box())
    await userEvent.type(box(), 'x{Enter}{Escape}')
    expect(box()).toHaveValue('680')
    expect(box()).toBeValid()
  })

  it('steps by its buttons and by the arrow keys, to whole steps', async () => {
    const onChange = vi.fn<(value: number) => void>()
    render(<Kept first={0.683} onChange={onChange} />)
    await userEvent.click(screen.getByRole('button', { name: 'more' }))
    expect(onChange).toHaveBeenLastCalledWith(0.69)
    await userEvent.click(screen.getByRole('button', { name: 'less' }))
    expect(onChange).toHaveBeenLastCalledWith(0.68)
    await userEvent.type(box(), '{ArrowUp}{ArrowUp}')
    expect(onChange).toHaveBeenLastCalledWith(0.7)
  })

  it('says that it stands at its limit and stays there', async () => {
    const onChange = vi.fn<(value: number) => void>()
    render(<Kept first={2} onChange={onChange} />)
    expect(screen.getByText('2000 mm is the most')).toBeVisible()
    await userEvent.click(screen.getByRole('button', { name: 'more' }))
    expect(onChange).not.toHaveBeenCalled()
    expect(screen.getByRole('button', { name: 'more' })).toHaveAttribute('aria-disabled', 'true')
  })

  it('takes a refusal of the whole plan as its own', async () => {
    const onChange = vi.fn<(value: number) => void>()
    render(
      <Kept first={0.68} onChange={onChange} refuse={(value) => (value > 1 ? 'does not go with the rest' : null)} />,
    )
    await userEvent.clear(box())
    await userEvent.type(box(), '1200{Enter}')
    expect(screen.getByRole('alert')).toHaveTextContent('does not go with the rest')
    expect(onChange).not.toHaveBeenCalled()
  })

  it('runs while held and stops when let go', () => {
    vi.useFakeTimers()
    const onChange = vi.fn<(value: number) => void>()
    render(<Kept first={0.68} onChange={onChange} />)
    const more = screen.getByRole('button', { name: 'more' })
    more.dispatchEvent(new MouseEvent('pointerdown', { bubbles: true, button: 0 }))
    vi.advanceTimersByTime(1000)
    const held = onChange.mock.calls.length
    expect(held).toBeGreaterThan(1)
    more.dispatchEvent(new MouseEvent('pointerup', { bubbles: true }))
    vi.advanceTimersByTime(1000)
    expect(onChange.mock.calls.length).toBe(held)
    vi.useRealTimers()
  })
})
