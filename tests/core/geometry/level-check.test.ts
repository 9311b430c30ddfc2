import { describe, expect, it } from 'vitest'
import { levelCheck, type LevelReading } from '../../../src/core/geometry/level-check.ts'
import type { Peg } from '../../../src/core/geometry/tape-network.ts'

const pegs: Peg[] = [
  { id: 'A', xM: 0, yM: 0 },
  { id: 'B', xM: 2, yM: 0 },
  { id: 'C', xM: 2, yM: 1 },
  { id: 'D', xM: 0, yM: 1 },
]
const joint = { minM: 0.008, usualM: 0.01, maxM: 0.02 }
const read = (downs: Record<string, number>): LevelReading[] =>
  Object.entries(downs).map(([peg, downM]) => ({ peg, downM }))
const check = (downs: Record<string, number>, first?: LevelReading) => levelCheck(pegs, read(downs), joint, first)
const valueOf = (downs: Record<string, number>) => {
  const result = check(downs)
  if (!result.ok) throw new Error('refused')
  return result.value
}

describe('levels of the footing', () => {
  it('a level footing takes the usual joint all round', () => {
    const { corners, accepted, spreadM } = valueOf({ A: 0.5, B: 0.5, C: 0.5, D: 0.5 })
    expect(corners.every(({ jointM, raiseM }) => Math.abs(jointM - 0.01) < 1e-12 && raiseM === 0)).toBe(true)
    expect([accepted, spreadM]).toEqual([true, 0])
  })

  it('a footing that falls 8 mm to the right is taken up by joints that stay in their range', () => {
    const { corners, riseAcross, riseBack, twistM, accepted } = valueOf({ A: 0.5, B: 0.508, C: 0.508, D: 0.5 })
    const joints = corners.map(({ jointM }) => Math.round(jointM * 1e4) / 10)
    // Mean joint as near 10 mm as the least of 8 mm lets it: 8 on the high side, 16 on the low.
    expect(joints).toEqual([8, 16, 16, 8])
    expect(riseAcross).toBeCloseTo(-0.004, 9)
    expect(riseBack).toBeCloseTo(0, 9)
    expect(twistM).toBeCloseTo(0, 9)
    expect(accepted).toBe(true)
  })

  it('one corner 30 mm low is raised by what the joint cannot take', () => {
    const { corners, toRaise, accepted } = valueOf({ A: 0.5, B: 0.5, C: 0.53, D: 0.5 })
    expect(toRaise).toEqual(['C'])
    // From a least joint of 8 mm: 38 mm are wanted at C, the joint takes 20, 18 are made up.
    expect(corners.find(({ peg }) => peg === 'C')).toEqual({
      peg: 'C',
      lowByM: expect.closeTo(0.03, 9) as number,
      jointM: expect.closeTo(0.02, 9) as number,
      raiseM: expect.closeTo(0.018, 9) as number,
    })
    expect(accepted).toBe(false)
  })

  it('the joint and what is raised bring every corner to one level', () => {
    const { corners } = valueOf({ A: 0.512, B: 0.5, C: 0.541, D: 0.507 })
    const tops = corners.map(({ lowByM, jointM, raiseM }) => jointM + raiseM - lowByM)
    for (const top of tops) expect(top).toBeCloseTo(tops[0] ?? 0, 12)
  })

  it('tells a twist from a fall', () => {
    expect(valueOf({ A: 0.5, B: 0.504, C: 0.5, D: 0.504 }).twistM).toBeCloseTo(0.002, 9)
  })

  it('missing, wrong, double and contradictory readings have each their own message', () => {
    const problems = (downs: Record<string, number>, first?: LevelReading) => {
      const result = check(downs, first)
      return result.ok ? [] : result.problems
    }
    const level = { A: 0.5, B: 0.5, C: 0.5, D: 0.5 }
    expect(problems({ A: 0.5, C: 0.5 })).toEqual([{ kind: 'missing', pegs: ['B', 'D'] }])
    expect(problems({ ...level, B: Number.NaN })).toEqual([{ kind: 'not-a-reading', peg: 'B' }])
    expect(problems({ ...level, B: 500 })).toEqual([{ kind: 'too-far-apart', spreadM: 499.5 }])
    expect(problems(level, { peg: 'A', downM: 0.512 })).toEqual([
      { kind: 'moved', peg: 'A', byM: expect.closeTo(0.012, 9) as number },
    ])
    expect(problems(level, { peg: 'A', downM: 0.502 })).toEqual([])
    const twice = levelCheck(pegs, [...read(level), { peg: 'A', downM: 0.5 }], joint)
    expect(twice.ok ? [] : twice.problems).toEqual([{ kind: 'twice', peg: 'A' }])
  })
})
