import { bench, describe } from 'vitest'
import { drying } from '../../src/core/fish/drying.ts'
import { fishLoad } from '../../src/core/fish/load.ts'
import { trayFrame } from '../../src/core/fish/tray-frame.ts'
import { conduct } from '../../src/core/heat/conduct.ts'
import { fuel } from '../../src/core/heat/fuel.ts'
import { kilnHeat } from '../../src/core/heat/kiln-heat.ts'
import { outerWall } from '../../src/core/heat/wall-section.ts'
import { schedule } from '../../src/core/schedule/schedule.ts'
import { buildTasks } from '../../src/core/schedule/tasks.ts'
import { workOut } from '../../src/core/work-out.ts'
import { plainPlan } from '../core/fish/plans.ts'

/** Budgets: 12 h of one wall 3 ms; schedule 1 ms. Fuel and the comparison of fillings are worked out only where shown. */
describe('two chambers of hollow block', () => {
  const plan = plainPlan(60)
  const { tray, geometry, layout, fish } = workOut(plan)
  const wall = outerWall(plan, 'sand')
  const phases = [{ hours: 12, gasDegC: 90, insideFilmWm2K: 20 }]

  bench('tray', () => void trayFrame(plan))
  bench('load', () => void fishLoad(plan))
  bench('one wall, 12 h', () => void conduct(wall, phases, { airDegC: 30, start: 30 }))
  bench('wood by two routes', () => void fuel(plan, drying(plan, fish.fullFiring.fresh)))
  bench('fillings compared', () => void kilnHeat(plan, tray))
  bench('tasks and schedule', () => void schedule(plan, buildTasks(plan, tray, geometry, layout)))
})
