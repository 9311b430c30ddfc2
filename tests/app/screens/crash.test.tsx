import { render, screen } from '@testing-library/react'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { Crash } from '../../../src/app/screens/Crash.tsx'

const Broken = () => {
  throw new Error('a course has no units')
}

describe('a fault of the app', () => {
  // React tells the console of every error that a boundary catches.
  beforeEach(() => void vi.spyOn(console, 'error').mockImplementation(() => {}))
  afterEach(() => void vi.restoreAllMocks())

  it('says what happened, keeps the plan in reach and offers to start again', () => {
    render(
      <Crash planId="plan-1">
        <Broken />
      </Crash>,
    )
    expect(screen.getByRole('alert')).toHaveTextContent('a course has no units')
    expect(screen.getByRole('button', { name: 'Take a copy of this plan' })).toBeVisible()
    expect(screen.getByRole('button', { name: 'Start again' })).toBeVisible()
    expect(screen.getByRole('link', { name: /plans on this phone/ })).toHaveAttribute('href', '#/')
  })

  it('offers no copy where no plan was open', () => {
    render(
      <Crash planId={null}>
        <Broken />
      </Crash>,
    )
    expect(screen.queryByRole('button', { name: 'Take a copy of this plan' })).toBeNull()
  })
})
