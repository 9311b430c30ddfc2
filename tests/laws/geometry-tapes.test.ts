import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { kilnGeometry } from '../../src/core/geometry/kiln.ts'
import { adjustTapes, type TapeAdjustment } from '../../src/core/geometry/tape-check.ts'
import type { Peg, TapeReading } from '../../src/core/geometry/tape-network.ts'
import { planLength, tapePegs, tapesToTake } from '../../src/core/geometry/tape-plan.ts'
import { LEVELS, planWith } from '../core/geometry/plans.ts'
import { cases } from './cases.ts'

const kiln = (count: number, side: number) => kilnGeometry(planWith(count, side, 0.15), LEVELS)

const adjusted = (pegs: readonly Peg[], readings: readonly TapeReading[]): TapeAdjustment => {
  const result = adjustTapes(pegs, readings)
  if (!result.ok) throw new Error(JSON.stringify(result.problems))
  return result.value
}

const misfitOf = (pegs: readonly Peg[], readings: readonly TapeReading[]): number =>
  readings.reduce((sum, { from, to, lengthM }) => sum + (planLength(pegs, from, to) - lengthM) ** 2, 0)

/** Least value of a function by the downhill simplex of Nelder and Mead (The Computer Journal 7, 1965): compares values only, no slopes, no matrices. */
function nelderMead(f: (x: readonly number[]) => number, start: readonly number[], size: number): number {
  const moved = (x: readonly number[], i: number) => x.map((value, j) => (i === j ? value + size : value))
  let simplex = [start, ...start.map((_, i) => moved(start, i))].map((x) => ({ x, y: f(x) }))
  for (let round = 0; round < 20_000; round++) {
    simplex = simplex.toSorted((one, other) => one.y - other.y)
    const best = simplex[0]
    const worst = simplex.at(-1)
    const second = simplex.at(-2)
    if (!best || !worst || !second || worst.y - best.y < 1e-18) break
    const others = simplex.slice(0, -1)
    const middle = start.map((_, i) => others.reduce((sum, { x }) => sum + (x[i] ?? 0), 0) / others.length)
    const at = (t: number) => {
      const x = middle.map((m, i) => m + t * ((worst.x[i] ?? 0) - m))
      return { x, y: f(x) }
    }
    const reflected = at(-1)
    const next =
      reflected.y < best.y
        ? [reflected, at(-2)].toSorted((a, b) => a.y - b.y)[0]
        : reflected.y < second.y
          ? reflected
          : [at(-0.5), at(0.5)].toSorted((a, b) => a.y - b.y)[0]
    if (next && next.y < worst.y) simplex = [...others, next]
    else
      simplex = simplex.map(({ x }) => x.map((value, i) => ((best.x[i] ?? 0) + value) / 2)).map((x) => ({ x, y: f(x) }))
  }
  return Math.min(...simplex.map(({ y }) => y))
}

const noise = fc.double({ min: -0.008, max: 0.008, noNaN: true })

describe('tape adjustment', { timeout: 60_000 }, () => {
  it('fits no worse than a general minimiser and no better than it either, on random quadrilaterals', () => {
    const shift = fc.double({ min: -0.03, max: 0.03, noNaN: true })
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 4 }),
        fc.double({ min: 0.5, max: 1.8, noNaN: true }),
        fc.array(shift, { minLength: 8, maxLength: 8 }),
        fc.array(noise, { minLength: 6, maxLength: 6 }),
        (count, side, shifts, errors) => {
          const plan = tapePegs(kiln(count, side)).slice(0, 4)
          const real = plan.map((peg, i) => ({
            ...peg,
            xM: peg.xM + (shifts[2 * i] ?? 0),
            yM: peg.yM + (shifts[2 * i + 1] ?? 0),
          }))
          const readings = tapesToTake(kiln(count, side))
            .slice(0, 6)
            .map(({ from, to }, i) => ({ from, to, lengthM: planLength(real, from, to) + (errors[i] ?? 0) }))
          const ours = misfitOf(adjusted(plan, readings).pegs, readings)
          const place = (x: readonly number[]): Peg[] => [
            { id: 'A', xM: 0, yM: 0 },
            { id: 'B', xM: x[0] ?? 0, yM: 0 },
            { id: 'C', xM: x[1] ?? 0, yM: x[2] ?? 0 },
            { id: 'D', xM: x[3] ?? 0, yM: x[4] ?? 0 },
          ]
          const [, b, c, d] = plan
          const start = [b?.xM ?? 0, c?.xM ?? 0, c?.yM ?? 0, d?.xM ?? 0, d?.yM ?? 0]
          const general = nelderMead((x) => misfitOf(place(x), readings), nelderStart(place, readings, start), 0.01)
          expect(ours).toBeLessThanOrEqual(general + 1e-12)
          expect(general - ours).toBeLessThan(1e-9)
        },
      ),
      { numRuns: cases(60) },
    )
  })

  it('leaves perfect tapes as they are, moves no peg and accepts', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 8 }),
        fc.double({ min: 0.4, max: 2, noNaN: true }),
        fc.boolean(),
        (count, side, all) => {
          const pegs = tapePegs(kiln(count, side))
          const readings = tapesToTake(kiln(count, side))
            .slice(0, all ? undefined : 6)
            .map(({ from, to, planM }) => ({ from, to, lengthM: planM }))
          const result = adjusted(pegs, readings)
          expect(Math.max(...result.tapes.map((tape) => Math.abs(tape.correctionM)))).toBeLessThan(1e-9)
          expect(result.moves.every((move) => move.along === null && move.across === null)).toBe(true)
          expect(Math.abs(result.outOfSquareDeg)).toBeLessThan(1e-6)
          expect(result.accepted).toBe(true)
          expect(result.suspicious).toBeNull()
        },
      ),
      { numRuns: cases(60) },
    )
  })

  it('finds pegs again from error-free tapes of a crooked setting out, and its moves bring them home', () => {
    const shift = fc.double({ min: -0.04, max: 0.04, noNaN: true })
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5 }),
        fc.double({ min: 0.5, max: 1.5, noNaN: true }),
        fc.array(shift, { minLength: 24, maxLength: 24 }),
        (count, side, shifts) => {
          const geometry = kiln(count, side)
          const plan = tapePegs(geometry)
          const real = plan.map((peg, i) => ({
            ...peg,
            xM: peg.id === 'A' ? 0 : peg.xM + (shifts[2 * i] ?? 0),
            yM: peg.id === 'A' || peg.id === 'B' ? 0 : peg.yM + (shifts[2 * i + 1] ?? 0),
          }))
          const readings = tapesToTake(geometry).map(({ from, to }) => ({
            from,
            to,
            lengthM: planLength(real, from, to),
          }))
          const result = adjusted(plan, readings)
          for (const [i, peg] of result.pegs.entries()) {
            const move = result.moves[i]
            const right = move?.along ? move.along.byM * (move.along.toward === 'right' ? 1 : -1) : 0
            const back = move?.across ? move.across.byM * (move.across.toward === 'back' ? 1 : -1) : 0
            expect(Math.hypot((real[i]?.xM ?? 0) - peg.xM, (real[i]?.yM ?? 0) - peg.yM)).toBeLessThan(1e-6)
            expect(Math.hypot(peg.xM + right - (plan[i]?.xM ?? 0), peg.yM + back - (plan[i]?.yM ?? 0))).toBeLessThan(
              0.001,
            )
          }
        },
      ),
      { numRuns: cases(40) },
    )
  })

  it('names the tape that was misread by a hand or more where several chambers check each other', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 5 }),
        fc.nat({ max: 30 }),
        fc.constantFrom(0.1, -0.1, 0.05, -0.05),
        fc.array(fc.double({ min: -0.001, max: 0.001, noNaN: true }), { minLength: 40, maxLength: 40 }),
        (count, pick, slipM, errors) => {
          const geometry = kiln(count, 0.68)
          const wanted = tapesToTake(geometry)
          const wrong = pick % wanted.length
          const readings = wanted.map(({ from, to, planM }, i) => ({
            from,
            to,
            lengthM: planM + (errors[i] ?? 0) + (i === wrong ? slipM : 0),
          }))
          const result = adjusted(tapePegs(geometry), readings)
          expect(result.disagree).toBe(true)
          expect(result.accepted).toBe(false)
          expect([result.suspicious?.from, result.suspicious?.to]).toEqual([wanted[wrong]?.from, wanted[wrong]?.to])
          expect(Math.abs((result.suspicious?.expectedM ?? 0) - (wanted[wrong]?.planM ?? 0))).toBeLessThan(0.01)
        },
      ),
      { numRuns: cases(60) },
    )
  })
})

/** A first search with a wide simplex, so that the fine one starts near. */
function nelderStart(
  place: (x: readonly number[]) => Peg[],
  readings: readonly TapeReading[],
  start: readonly number[],
): readonly number[] {
  let best = start
  for (let round = 0; round < 3; round++) {
    const here = misfitOf(place(best), readings)
    for (const i of best.keys())
      for (const step of [0.02, -0.02, 0.005, -0.005]) {
        const tried = best.map((value, j) => (i === j ? value + step : value))
        if (
          misfitOf(place(tried), readings) < here &&
          misfitOf(place(tried), readings) < misfitOf(place(best), readings)
        )
          best = tried
      }
  }
  return best
}
