import { describe, expect, it } from 'vitest'
import { slopeByPegs, slopeReadings } from '../../../src/core/geometry/slope-by-pegs.ts'
import { tapePicture } from '../../../src/core/geometry/tape-picture.ts'
import { newPlan } from '../../../src/core/plan/defaults.ts'
import type { Plan } from '../../../src/core/plan/schema.ts'
import { workOut } from '../../../src/core/work-out.ts'

const FIRST = {
  id: 'slope',
  name: 'Slope',
  freshKgPerDay: 60,
  unitKey: 'hollow-450-150-225',
  soil: 'sand-dense',
  currency: { code: 'GHS', digits: 2 },
}

describe('slope from heights at pegs', () => {
  it('ground 120 mm further under the line at a peg 2 m to the right falls 6 in 100 to the right', () => {
    const read = slopeByPegs({
      downAtFrontLeftM: 0.5,
      right: { downM: 0.62, apartM: 2 },
      back: { downM: 0.45, apartM: 1 },
    })
    expect(read.ok && [read.value.across, read.value.back].map((rise) => Number(rise.toFixed(9)))).toEqual([
      -0.06, 0.05,
    ])
  })
  it('two heights at two pegs will do', () => {
    const read = slopeByPegs({ downAtFrontLeftM: 0.5, right: null, back: { downM: 0.5, apartM: 1 } })
    expect(read.ok && read.value).toEqual({ across: 0, back: 0 })
  })
  it('nothing, nonsense and ground too steep have each their own message', () => {
    const problems = (...of: Parameters<typeof slopeByPegs>) => {
      const read = slopeByPegs(...of)
      return read.ok ? [] : read.problems
    }
    expect(problems({ downAtFrontLeftM: 0.5, right: null, back: null })).toEqual([{ kind: 'nothing-read' }])
    expect(problems({ downAtFrontLeftM: Number.NaN, right: { downM: 0, apartM: 0 }, back: null })).toEqual([
      { kind: 'not-a-length', peg: 'front-left' },
      { kind: 'not-a-length', peg: 'right' },
    ])
    expect(problems({ downAtFrontLeftM: 0.5, right: { downM: 1, apartM: 1.9 }, back: null })).toEqual([
      { kind: 'terrace-first', slope: expect.closeTo(0.263, 3) as number },
    ])
    expect(problems({ downAtFrontLeftM: 0.5, right: { downM: 1, apartM: 2 }, back: null })).toEqual([])
  })
})

describe('heights that a plan keeps', () => {
  const none = { frontLeftM: null, rightM: null, rightApartM: null, backM: null, backApartM: null }
  const readingsOf = (heights: Partial<Plan['ground']['heights']>) =>
    slopeReadings({ ...newPlan(FIRST).ground, heights: { ...none, ...heights } })
  it('are nothing until something is read, and a half-read peg is told', () => {
    expect(readingsOf({})).toBeNull()
    const half = readingsOf({ frontLeftM: 0.5, rightM: 0.6 })
    const read = half === null ? null : slopeByPegs(half)
    expect(read?.ok === false && read.problems).toEqual([{ kind: 'not-a-length', peg: 'right' }])
    const whole = readingsOf({ frontLeftM: 0.5, rightM: 0.6, rightApartM: 2 })
    const slope = whole === null ? null : slopeByPegs(whole)
    expect(slope?.ok === true && slope.value.across).toBeCloseTo(-0.05, 12)
  })
  it('steeper than one in four are a problem of the plan, though it takes no such slope', () => {
    const plan = newPlan(FIRST)
    const heights = { ...none, frontLeftM: 0.2, backM: 1.0, backApartM: 2.5 }
    const { findings } = workOut({ ...plan, ground: { ...plan.ground, heights } })
    // 0.8 m in 2.5 m is 32 in 100.
    expect(findings.find(({ kind }) => kind === 'ground.terrace-first')?.args).toEqual({ slope: 32 })
  })
})

describe('picture of the tapes', () => {
  const plan = [
    { id: 'A', xM: 0, yM: 0 },
    { id: 'C', xM: 3, yM: 4 },
  ]
  it('shows 5 mm on a 5 m diagonal fifty times, 60 mm five times, and says so', () => {
    const off = (m: number) => tapePicture(plan, [{ id: 'C', xM: 3 + m, yM: 4 }])
    expect(off(0.005)).toEqual({ times: 50, pegs: [{ id: 'C', xM: expect.closeTo(3.25, 9) as number, yM: 4 }] })
    expect(off(0.06).times).toBe(5)
    expect(off(2).times).toBe(1)
  })
})
