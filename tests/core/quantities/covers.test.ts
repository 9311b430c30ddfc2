import { describe, expect, it } from 'vitest'
import type { Plan } from '../../../src/core/plan/schema.ts'
import { workOut } from '../../../src/core/work-out.ts'
import { examplePlan } from '../costs/plans.ts'

const base = examplePlan('two-chambers')
const withCover = (cover: Plan['trays']['cover'], offers: Plan['offers'] = {}): Plan => ({
  ...base,
  trays: { ...base.trays, cover },
  offers: { ...base.offers, ...offers },
})
const side = workOut(base).tray.side.value

describe('covers, one for each of two stacks, as large as the tray', () => {
  it('of boards: whole boards side by side, two ledgers under each', () => {
    const { needs } = workOut(withCover('board'))
    const boards = needs.find(({ item }) => item === 'cover-board')
    // Frame of 0.78 m (0.68 clear, 30 set back, 20 thick): six boards of 150 mm cover it, five would be 30 mm short.
    expect(side).toBeCloseTo(0.78, 9)
    expect(boards?.pieces).toEqual([{ lengthM: side, count: 12, label: 'piece.cover-board' }])
    const ledgers = needs.find(({ item }) => item === 'rail')?.pieces?.find(({ label }) => label === 'piece.cover-rail')
    expect(ledgers?.count).toBe(4)
  })

  it('of boards: as wide as the ones on offer', () => {
    const board = base.offers['cover-board']
    if (board === undefined) throw new Error('the example has boards')
    const { needs } = workOut(withCover('board', { 'cover-board': { ...board, widthM: 0.2 } }))
    expect(needs.find(({ item }) => item === 'cover-board')?.pieces?.[0]?.count).toBe(8)
  })

  it('framed: four rails round each sheet; of sheet alone: none', () => {
    const count = (cover: Plan['trays']['cover']) =>
      workOut(withCover(cover))
        .needs.find(({ item }) => item === 'rail')
        ?.pieces?.find(({ label }) => label === 'piece.cover-rail')?.count
    expect(count('framed')).toBe(8)
    expect(count('sheet')).toBeUndefined()
  })

  it('of sheet: one sheet of 2.44 × 1.22 gives both', () => {
    // 2.44 holds three of 0.78 with the saw between them, 1.22 one.
    const line = workOut(withCover('sheet')).purchase.lines.find(({ item }) => item === 'cover-sheet')
    expect(line?.lots.value).toBe(1)
    expect(line?.bought.value).toBeCloseTo(2.44 * 1.22, 9)
    expect(line?.covers.value).toBeCloseTo(2 * 0.78 ** 2, 9)
  })
})
