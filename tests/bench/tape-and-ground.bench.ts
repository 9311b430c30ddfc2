import { bench, describe } from 'vitest'
import { kilnGeometry } from '../../src/core/geometry/kiln.ts'
import { settingOut } from '../../src/core/geometry/setting-out.ts'
import { siteOf } from '../../src/core/geometry/site.ts'
import { adjustTapes } from '../../src/core/geometry/tape-check.ts'
import { tapePegs, tapesToTake } from '../../src/core/geometry/tape-plan.ts'
import { facingOf } from '../../src/core/geometry/wind.ts'
import { trayFrame } from '../../src/core/fish/tray-frame.ts'
import { LEVELS, planWith } from '../core/geometry/plans.ts'

describe.each([1, 2, 8])('%s chambers', (count) => {
  const plan = planWith(count, 0.68, 0.15, (one) => {
    one.place.windDayDeg = 200
    one.place.shelter = 'open-roof'
  })
  const tray = trayFrame(plan)
  const geometry = kilnGeometry(plan, LEVELS)
  const pegs = tapePegs(geometry)
  const all = tapesToTake(geometry).map(({ from, to, planM }, i) => ({
    from,
    to,
    lengthM: planM + 0.001 * ((i * 7) % 3),
  }))
  const misread = all.map((one, i) => (i === 0 ? { ...one, lengthM: one.lengthM + 0.1 } : one))

  bench('geometry', () => void kilnGeometry(plan, LEVELS))
  bench('site', () => void siteOf(plan, geometry, tray))
  bench('setting out', () => void settingOut(geometry, facingOf(plan), 0))
  bench('six tapes', () => void adjustTapes(pegs, all.slice(0, 6)))
  bench('all tapes', () => void adjustTapes(pegs, all))
  bench('all tapes, one misread', () => void adjustTapes(pegs, misread))
})
