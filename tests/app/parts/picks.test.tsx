import { render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, it, vi } from 'vitest'
import { FindingLine } from '../../../src/app/parts/FindingLine.tsx'
import { Num } from '../../../src/app/parts/Num.tsx'
import { Picks, Segments } from '../../../src/app/parts/Picks.tsx'
import { Toast } from '../../../src/app/parts/Toast.tsx'

describe('choice cards and segments', () => {
  it('are one group of radios with a name, chosen by mouse or arrow keys', async () => {
    const onChoose = vi.fn<(key: 'block' | 'brick') => void>()
    render(
      <Picks
        name="Wall unit"
        choices={[
          { key: 'block', title: 'Hollow block', detail: '450 × 150 × 225' },
          { key: 'brick', title: 'Fired brick' },
        ]}
        chosen="block"
        onChoose={onChoose}
      />,
    )
    expect(screen.getByRole('group', { name: 'Wall unit' })).toBeVisible()
    expect(screen.getByRole('radio', { name: /Hollow block/ })).toBeChecked()
    await userEvent.click(screen.getByText('Fired brick'))
    expect(onChoose).toHaveBeenLastCalledWith('brick')
    screen.getByRole('radio', { name: /Hollow block/ }).focus()
    await userEvent.keyboard('{ArrowDown}')
    expect(onChoose).toHaveBeenCalledTimes(2)
  })

  it('keep their name for those who hear it where it is not shown', () => {
    render(
      <Segments
        name="Drawing"
        choices={[
          { key: 'a', label: 'Plan' },
          { key: 'b', label: 'Front' },
        ]}
        chosen="a"
        onChoose={() => {}}
      />,
    )
    expect(screen.getByRole('group', { name: 'Drawing' })).toBeInTheDocument()
  })
})

describe('a worked-out figure', () => {
  it('is a button that says what it is, how much and in which unit', async () => {
    const onOpen = vi.fn<() => void>()
    render(<Num label="Fish a day" figure="92" unit="kg" onOpen={onOpen} />)
    await userEvent.click(screen.getByRole('button', { name: 'Fish a day: 92 kg' }))
    expect(onOpen).toHaveBeenCalledOnce()
  })
})

describe('a finding', () => {
  it('says its kind in a word, not by colour alone', () => {
    render(
      <ul>
        <FindingLine level="problem" number={1} word="Problem.">
          Rails would hang over the fire.
        </FindingLine>
      </ul>,
    )
    expect(screen.getByRole('listitem')).toHaveTextContent('Problem. Rails would hang over the fire.')
  })
})

describe('a notice', () => {
  it('offers the way back and can be put away', async () => {
    const onUndo = vi.fn<() => void>()
    const onClose = vi.fn<() => void>()
    render(<Toast text="Deleted" undo={{ label: 'Undo', onUndo }} close={{ label: 'Close', onClose }} />)
    expect(screen.getByText('Deleted')).toBeVisible()
    await userEvent.click(screen.getByRole('button', { name: 'Undo' }))
    await userEvent.click(screen.getByRole('button', { name: 'Close' }))
    expect(onUndo).toHaveBeenCalledOnce()
    expect(onClose).toHaveBeenCalledOnce()
  })
})
