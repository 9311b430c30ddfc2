import { describe, expect, it } from 'vitest'
import { kilnGeometry } from '../../../src/core/geometry/kiln.ts'
import { settingOut } from '../../../src/core/geometry/setting-out.ts'
import { facingOf } from '../../../src/core/geometry/wind.ts'
import { LEVELS, planWith } from './plans.ts'

const plan = planWith(1, 0.68, 0.16, (one) => {
  one.place.windDayDeg = 225
  one.place.declinationDeg = -2
  one.openings.widthM = 0.35
})
const kiln = () => kilnGeometry(plan, LEVELS)
const out = () => settingOut(kiln(), facingOf(plan), plan.place.declinationDeg)

describe('setting out the common kiln of one metre square', () => {
  it('reads 0, 160, 840, 1000 mm along the side in one pull', () => {
    // Common practice: wall 160, inside 680, over all 1000.
    const side = kiln().tapeRuns.find((run) => run.side === 'left')
    expect(side?.marks.map((mark) => Math.round(mark.at.value * 1000))).toEqual([0, 160, 840, 1000])
  })
  it('marks the 350 mm opening in the middle of the front', () => {
    const front = kiln().tapeRuns.find((run) => run.side === 'front')
    expect(front?.marks.map((mark) => Math.round(mark.at.value * 1000))).toEqual([0, 160, 325, 675, 840, 1000])
  })
  it('keeps every peg and board a metre or more clear of the dig', () => {
    const { outline } = kiln().footing.shape
    for (const { xM, yM } of out().offsets) {
      const dx = Math.max(outline.x0M - xM, xM - outline.x1M, 0)
      const dy = Math.max(outline.y0M - yM, yM - outline.y1M, 0)
      expect(Math.hypot(dx, dy)).toBeGreaterThanOrEqual(1 - 1e-9)
    }
    expect(out().offsets).toHaveLength(8)
  })
  it('squares the corner with 1.5, 2.0 and 2.5 m, a true right angle that both strings can hold', () => {
    const { short, long, slant } = out().square
    expect([short.value, long.value, slant.value].map((value) => Math.round(value * 1000))).toEqual([1500, 2000, 2500])
    expect(Math.hypot(short.value, long.value)).toBeCloseTo(slant.value, 12)
  })
  it('sets the board nails at trench, face, inside and trench again', () => {
    expect(out().boards.map(({ at }) => Math.round(at.value * 1000))).toEqual([-100, 0, 160, 260])
  })
  it('front to the south-west wind: the string from A to B runs north-west to south-east, 2° more on a compass that points 2° west', () => {
    // The front looks to 225°; whoever stands in front looks to 45° and has B on the right hand, at 135°.
    expect(out().bearings?.frontLine.value).toBeCloseTo(135, 9)
    expect(out().bearings?.frontLineMagnetic.value).toBeCloseTo(137, 9)
    const b = out().bearings?.points.find(({ id }) => id === 'B')
    expect([b?.eastM, b?.northM].map((value) => Number(value?.toFixed(4)))).toEqual([0.7071, -0.7071])
  })
  it('has no bearings while no wind is known', () => {
    const calm = planWith(1, 0.68, 0.16)
    expect(settingOut(kilnGeometry(calm, LEVELS), facingOf(calm), 0).bearings).toBeNull()
  })
  it('goes from clearing to wall marks, and each step drives only pegs whose place its tapes fix', () => {
    expect(out().steps.map(({ id }) => id)).toEqual([
      'clear',
      'front-line',
      'front-length',
      'square',
      'depth',
      'fourth-peg',
      'diagonals',
      'offsets',
      'dig-lines',
      'levels',
      'wall-marks',
    ])
    for (const { diagram } of out().steps)
      for (const { from, to, lengthM } of diagram.taped)
        expect(Math.hypot(from.xM - to.xM, from.yM - to.yM)).toBeCloseTo(lengthM, 12)
    const fourth = out().steps.find(({ id }) => id === 'fourth-peg')
    for (const arc of fourth?.diagram.arcs ?? []) {
      const [c] = fourth?.diagram.now ?? []
      expect(Math.hypot((c?.xM ?? 0) - arc.centre.xM, (c?.yM ?? 0) - arc.centre.yM)).toBeCloseTo(arc.radiusM, 12)
    }
  })
  it('names every point once', () => {
    const three = kilnGeometry(planWith(3, 0.7, 0.15), LEVELS)
    expect(new Set(three.points.map(({ id }) => id)).size).toBe(three.points.length)
    // Four corners each of outside and trench, and of island, chamber and opening three times.
    expect(three.points).toHaveLength(8 + 3 * 12)
  })
})
