import { describe, expect, it } from 'vitest'
import { kilnGeometry } from '../../../src/core/geometry/kiln.ts'
import { adjustTapes } from '../../../src/core/geometry/tape-check.ts'
import { tapePegs } from '../../../src/core/geometry/tape-plan.ts'
import { LEVELS, planWith } from './plans.ts'

// A kiln of 1.84 × 1.00 m: diagonals 2.0942 m.
const pegs = tapePegs(kilnGeometry(planWith(2, 0.68, 0.16), LEVELS)).slice(0, 4)
const taped = (lengths: Record<string, number>) =>
  adjustTapes(
    pegs,
    Object.entries(lengths).map(([ends, lengthM]) => ({ from: ends.charAt(0), to: ends.charAt(1), lengthM })),
  )
const right = { AB: 1.84, BC: 1, CD: 1.84, DA: 1, AC: 2.0942, BD: 2.0942 }
const problemsOf = (lengths: Record<string, number>) => {
  const result = taped(lengths)
  return result.ok ? [] : result.problems
}

describe('tapes that cannot be worked with', () => {
  it('four sides alone flex: either diagonal fixes them', () => {
    expect(problemsOf({ AB: 1.84, BC: 1, CD: 1.84, DA: 1 })).toEqual([
      {
        kind: 'not-enough',
        oneOf: [
          ['A', 'C'],
          ['B', 'D'],
        ],
      },
    ])
  })
  it('a missing side beside one diagonal is named', () => {
    const [problem] = problemsOf({ AB: 1.84, BC: 1, CD: 1.84, AC: 2.0942 })
    expect(problem?.kind === 'not-enough' && problem.oneOf).toEqual([
      ['A', 'D'],
      ['B', 'D'],
    ])
  })
  it('a side longer than the other two of its triangle is named with by how much', () => {
    const problems = problemsOf({ ...right, AC: 2.6, AB: 1.5, BC: 0.9 })
    expect(problems).toEqual([
      { kind: 'triangle', pegs: ['A', 'B', 'C'], longest: ['A', 'C'], overM: expect.closeTo(0.2, 9) as number },
    ])
  })
  it('a reading in another unit, of nothing, of a stranger, or twice is refused by name', () => {
    expect(problemsOf({ ...right, AB: 184 })).toEqual([
      { kind: 'far-from-plan', from: 'A', to: 'B', readM: 184, planM: expect.closeTo(1.84, 9) as number },
    ])
    expect(problemsOf({ ...right, AB: Number.NaN })).toEqual([{ kind: 'not-a-length', from: 'A', to: 'B' }])
    expect(problemsOf({ ...right, AX: 1 })).toEqual([{ kind: 'unknown-peg', peg: 'X' }])
    expect(problemsOf({ ...right, BA: 1.84 })).toEqual([{ kind: 'twice', from: 'B', to: 'A' }])
  })
})

describe('what the mason is told', () => {
  it('a leaning outline moves the two back pegs the same way', () => {
    // Both back pegs 20 mm to the right of square: AC = √(1.86² + 1²), BD = √(1.82² + 1²).
    const result = taped({
      ...right,
      DA: Math.hypot(0.02, 1),
      BC: Math.hypot(0.02, 1),
      AC: Math.hypot(1.86, 1),
      BD: Math.hypot(1.82, 1),
    })
    if (!result.ok) throw new Error('refused')
    const { moves, accepted, outOfSquareDeg } = result.value
    expect(moves.map(({ peg, along }) => [peg, along?.toward, Math.round((along?.byM ?? 0) * 1000)])).toEqual([
      ['A', undefined, 0],
      ['B', undefined, 0],
      ['C', 'left', 20],
      ['D', 'left', 20],
    ])
    expect(accepted).toBe(false)
    expect(outOfSquareDeg).toBeCloseTo((Math.atan(0.02) * 180) / Math.PI, 3)
  })
  it('four lengths will do: front, side and both diagonals, opposite sides taken as equal', () => {
    const result = taped({ AB: 1.84, BC: 1, AC: 2.0942, BD: 2.0942 })
    expect(result.ok && [result.value.parallelogram, result.value.redundancy, result.value.accepted]).toEqual([
      true,
      1,
      true,
    ])
  })
  it('five lengths fix the shape without checking it', () => {
    const { BD: _left, ...five } = right
    const result = taped(five)
    expect(result.ok && [result.value.redundancy, result.value.accepted]).toEqual([0, true])
  })
  it('one of six tapes misread by 100 mm is pointed out, with what the others make of it', () => {
    const result = taped({ ...right, BD: 2.1942 })
    expect(result.ok && result.value.suspicious).toEqual({
      from: 'B',
      to: 'D',
      readM: 2.1942,
      expectedM: expect.closeTo(2.0942, 3) as number,
    })
    expect(result.ok && result.value.accepted).toBe(false)
  })
  it('a set within 6 mm in 3 m is accepted', () => {
    const result = taped({ AB: 1.842, BC: 1.001, CD: 1.84, DA: 0.999, AC: 2.096, BD: 2.094 })
    expect(result.ok && result.value.accepted).toBe(true)
  })
})
