import { beforeAll, describe, expect, it } from 'vitest'
import { cutLengths } from '../../src/core/cutting/cut-lengths.ts'
import { leastCostByMilp, milpSolver, waysToFill } from '../core/cutting/milp.ts'
import { trayJob } from '../core/cutting/tray-jobs.ts'
import { cases } from '../laws/cases.ts'
import checks from './data/cutting-checks.json' with { type: 'json' }

/** Nodes after which the solver is let off a job: it says nothing then, and another job is asked. */
const MOST_NODES = 100
/** Ways to fill a bar up to which a job is put to the solver: larger ones cost it minutes and say no more. */
const MOST_WAYS = 60
const JOBS = cases(300)
/** Large jobs, with hundreds of ways, that the solver does finish: asked by name. */
const LARGE = [3, 121]

let solver: Awaited<ReturnType<typeof milpSolver>>
beforeAll(async () => {
  solver = await milpSolver()
})

// Source of every expected value here: HiGHS, a mixed-integer solver library, solving the same job in the same run.
describe('least cost of cutting, against a mixed-integer solver', () => {
  it('300 random tray jobs cost the same, and every job met is proven', () => {
    const different: { readonly seed: number; readonly cost: number; readonly solver: number }[] = []
    let decided = 0
    let seed = 0
    for (; decided < JOBS; seed++) {
      const job = trayJob(seed)
      const { cost, gap, problems } = cutLengths({ ...job, tidyNodes: 0 })
      expect({ seed, gap, problems }).toEqual({ seed, gap: 0, problems: [] })
      const ways = waysToFill(job)
      if (ways.ways.length > MOST_WAYS) continue
      const found = leastCostByMilp(solver, job, MOST_NODES, ways)
      if (found.Status !== 'Optimal') continue
      decided++
      if (cost !== Math.round(found.ObjectiveValue)) different.push({ seed, cost, solver: found.ObjectiveValue })
    }
    expect(different).toEqual([])
    // Were most jobs passed over, the 300 would be the easy ones only.
    expect(seed).toBeLessThanOrEqual(3 * JOBS)
  }, 60_000)

  it.each(LARGE)(
    'large tray job %i',
    (seed) => {
      const job = trayJob(seed)
      const found = leastCostByMilp(solver, job, 100_000)
      expect(found.Status).toBe('Optimal')
      expect(cutLengths({ ...job, tidyNodes: 0 }).cost).toBe(Math.round(found.ObjectiveValue))
    },
    60_000,
  )

  it.each(checks.one_d.map((c) => [c.id, c] as const))(
    '%s',
    (_, { items, stock }) => {
      const job = {
        pieces: items.map(([length = 0, count = 0]) => ({ lengthM: length / 1000, count })),
        stock: [{ key: 'bar', lengthM: stock / 1000, priceMinor: 1 }],
        kerfM: 0,
        keepM: 0,
      }
      const found = leastCostByMilp(solver, job, 100_000)
      expect(found.Status).toBe('Optimal')
      expect(cutLengths(job).cost).toBe(Math.round(found.ObjectiveValue))
    },
    30_000,
  )
})
