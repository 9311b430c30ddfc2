import Big from 'big.js'
import { describe, expect, it } from 'vitest'
import { costsSheet } from '../../../../src/app/screens/sheets/costs-sheet.ts'
import { handFor } from '../sheet-hand.tsx'

const hand = handFor('one-chamber')
const rows = costsSheet(hand).blocks.flatMap((block) => (block.kind === 'table' ? block.rows : []))
const { money } = hand.words
const row = (first: string) => {
  const found = rows.find(({ cells }) => cells[0] === first)
  if (found === undefined) throw new Error(first)
  return found.cells
}

describe('the printed account of the group', () => {
  // The example's own records, added by a decimal library: cash of two members, one purchase from the box.
  it('says what is in the box', () => {
    const inBox = new Big(60_000).plus(60_000).minus(5300)
    expect(row('In the box')[1]).toBe(money(inBox.toNumber()))
  })

  it('names everybody with promise, what was put in and share; the shares add up to what is used', () => {
    const { members } = hand.worked.plan
    for (const { name } of Object.values(members)) expect(row(name)).toHaveLength(5)
    // Promised in material and four days at the stated rate.
    expect(row('Net menders')[1]).toBe(money(new Big(2500).times(4).plus(9000).toNumber()))
    // Put in: material brought and one day; the smokers' cash and the blocks from their own pocket.
    expect(row('Net menders')[2]).toBe(money(new Big(4500).plus(2500).toNumber()))
    expect(row('Smokers')[2]).toBe(money(new Big(60_000).plus(8000).toNumber()))
    // Used: both purchases, the sand and the day, split 2 : 3 : 3 (largest remainder): 20 300 is 5075 + 7612.5 + 7612.5.
    const shares = ['Boat crew', 'Net menders', 'Smokers'].map((name) => row(name)[3])
    expect(shares[1]).toBe(money(5075))
    expect(new Set([shares[0], shares[2]])).toEqual(new Set([money(7612), money(7613)]))
  })

  it('lists every record with who paid', () => {
    expect(
      rows.some(({ cells }) => cells[1] === 'Cement' && cells[2] === 'Group box' && cells[3] === money(5300)),
    ).toBe(true)
    expect(rows.some(({ cells }) => cells[2] === 'Smokers' && cells[3] === money(8000))).toBe(true)
  })
})
