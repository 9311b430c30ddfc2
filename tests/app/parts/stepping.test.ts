import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isAt, stepped } from '../../../src/app/parts/stepping.ts'

describe('stepping', () => {
  it('comes to rest on whole steps, whatever a machine makes of 0.1', () => {
    expect(stepped(0.1 + 0.2, 0.1, 1, 0, 1)).toBe(0.4)
    expect(stepped(0.7, 0.1, -1, 0, 1)).toBe(0.6)
    expect(stepped(0.683, 0.01, 1, 0.4, 2)).toBe(0.69)
  })

  it('goes up and down again to where it was, and never past a limit', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 399 }),
        fc.constantFrom(0.001, 0.005, 0.01, 0.5, 1, 22.5),
        (steps, step) => {
          const value = Number((steps * step).toFixed(6))
          const max = 400 * step
          const up = stepped(value, step, 1, 0, max)
          expect(up).toBeGreaterThan(value)
          expect(stepped(up, step, -1, 0, max)).toBeCloseTo(value, 9)
          expect(stepped(max, step, 1, 0, max)).toBe(max)
          expect(isAt(stepped(step, step, -1, 0, max), 0, step)).toBe(true)
        },
      ),
    )
  })
})
