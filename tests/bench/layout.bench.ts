import { bench, describe } from 'vitest'
import { layOut } from '../../src/core/layout/lay-out.ts'
import { request, UNITS } from '../core/layout/requests.ts'

/** Budgets of the layout: 2 chambers ≤ 2 ms, 8 chambers of small brick in one-brick walls ≤ 15 ms, time per unit flat. */
describe('quick layout', () => {
  for (const chambers of [1, 2, 4, 8]) {
    const block = request({ unit: UNITS.hollow450x150, chambers })
    bench(`450 × 150 block, ${chambers} chambers`, () => {
      layOut(block)
    })
    const brick = request({ unit: UNITS.brick190, chambers, leaf: 'one-brick', bond: 'english' })
    bench(`190 × 90 × 90 brick, one-brick English, ${chambers} chambers`, () => {
      layOut(brick)
    })
  }
})
