import { describe, expect, it } from 'vitest'
import { adjustTapes, outOfSquareDeg } from '../../src/core/geometry/tape-check.ts'
import type { Peg } from '../../src/core/geometry/tape-network.ts'

const rectangle = (aM: number, bM: number): Peg[] => [
  { id: 'A', xM: 0, yM: 0 },
  { id: 'B', xM: aM, yM: 0 },
  { id: 'C', xM: aM, yM: bM },
  { id: 'D', xM: 0, yM: bM },
]

const tapes = (lengths: Record<string, number>) =>
  Object.entries(lengths).map(([ends, lengthM]) => ({ from: ends.charAt(0), to: ends.charAt(1), lengthM }))

describe('tapes', () => {
  it('a 6 × 4 m figure with diagonals of 7.221 and 7.201 m is 0.17215° out of square', () => {
    // Algebra: in a parallelogram p² − q² = 4ab·cos A, so the lean is asin((7.221² − 7.201²) / (4·6·4)).
    expect(outOfSquareDeg(6, 4, 7.221, 7.201)).toBeCloseTo(0.17215, 5)
  })

  it('six tapes of a 4 × 3 m rectangle adjust to the corrections and corners of two independent solvers', () => {
    // Computed outside this project by two independent general least-squares solvers, to the last digit shown.
    const result = adjustTapes(
      rectangle(4, 3),
      tapes({ AB: 4.003, BC: 2.998, CD: 3.998, DA: 3.003, AC: 5.009, BD: 5.003 }),
    )
    if (!result.ok) throw new Error('refused')
    const { tapes: checked, pegs } = result.value
    expect(checked.map((tape) => Number((tape.correctionM * 1000).toFixed(2)))).toEqual([
      2.12, 1.59, 2.12, 1.59, -2.65, -2.65,
    ])
    expect(pegs.map(({ xM, yM }) => [Number(xM.toFixed(5)), Number(yM.toFixed(5))])).toEqual([
      [0, 0],
      [4.00512, 0],
      [4.00824, 2.99959],
      [0.00812, 3.00458],
    ])
  })

  it('near a rectangle the corrections are those of the closed formula', () => {
    // Derived by algebra: w = a(ΔAB+ΔCD) + b(ΔBC+ΔDA) − d(ΔAC+ΔBD); sides −length·w/(4d²), diagonals +d·w/(4d²). First order, so to 1 % here.
    const [a, b, d] = [4, 3, 5]
    const off = { AB: 0.0021, BC: -0.0012, CD: -0.0007, DA: 0.0016, AC: -0.0015, BD: 0.0024 }
    const w = a * (off.AB + off.CD) + b * (off.BC + off.DA) - d * (off.AC + off.BD)
    const side = (length: number) => (-length * w) / (4 * d * d)
    const result = adjustTapes(
      rectangle(a, b),
      tapes({ AB: a + off.AB, BC: b + off.BC, CD: a + off.CD, DA: b + off.DA, AC: d + off.AC, BD: d + off.BD }),
    )
    if (!result.ok) throw new Error('refused')
    const expected = [side(a), side(b), side(a), side(b), -side(d), -side(d)]
    for (const [index, tape] of result.value.tapes.entries())
      expect(Math.abs(tape.correctionM / (expected[index] ?? 0) - 1)).toBeLessThan(0.01)
  })
})
