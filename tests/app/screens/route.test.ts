import { describe, expect, it } from 'vitest'
import { cardHref, placeHref, readRoute } from '../../../src/app/screens/route.ts'

describe('an address', () => {
  it('leads to a place, a card and a field, and back', () => {
    expect(readRoute(cardHref('a/b?c', 'buy', 'item:cement', 'offers.x.priceMinor'))).toEqual({
      screen: 'plan',
      id: 'a/b?c',
      place: 'buy',
      card: 'item:cement',
      field: 'offers.x.priceMinor',
    })
    expect(readRoute(placeHref('id', 'run'))).toEqual({
      screen: 'plan',
      id: 'id',
      place: 'run',
      card: null,
      field: null,
    })
  })

  it.each(['', '#', '#/', '#/nowhere', '#/plan', '#/plan/', '#/%E0%A4%A'])('%j leads to the front page', (hash) => {
    expect(readRoute(hash)).toEqual({ screen: 'front' })
  })

  it('with an unknown place leads to the plan itself', () => {
    expect(readRoute('#/plan/id/attic')).toMatchObject({ screen: 'plan', id: 'id', place: 'plan' })
  })
})
