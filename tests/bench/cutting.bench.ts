import { bench, describe } from 'vitest'
import { cutLengths } from '../../src/core/cutting/cut-lengths.ts'
import { cutRoll } from '../../src/core/cutting/cut-roll.ts'
import { cutSheets } from '../../src/core/cutting/cut-sheets.ts'
import type { LengthJob } from '../../src/core/cutting/length-job.ts'
import { leastCostByMilp, milpSolver } from '../core/cutting/milp.ts'
import { trayJob } from '../core/cutting/tray-jobs.ts'
import checks from '../reference/data/cutting-checks.json' with { type: 'json' }

/** Cutting to proof, against the HiGHS mixed-integer solver on the same job in the same run. */
const solver = await milpSolver()

/** One job after another from a list, so that a median is one over many jobs. */
function inTurn<T>(list: readonly T[]): () => T {
  let k = 0
  return () => list[k++ % list.length] as T
}

function against(name: string, jobs: readonly LengthJob[], mostNodes: number): void {
  describe(`${name}`, () => {
    const [own, tidy, milp] = [inTurn(jobs), inTurn(jobs), inTurn(jobs)]
    bench('least cost, proven', () => {
      cutLengths({ ...own(), tidyNodes: 0 })
    })
    bench('least cost, proven, then few patterns', () => {
      cutLengths(tidy())
    })
    bench(
      'mixed-integer solver',
      () => {
        leastCostByMilp(solver, milp(), mostNodes)
      },
      { iterations: jobs.length, time: 0, warmupIterations: 0, warmupTime: 0 },
    )
  })
}

const some = (n: number, size: Parameters<typeof trayJob>[1]) =>
  Array.from({ length: n }, (_, seed) => trayJob(seed, size))
against('8 chambers of 15 trays, 4 stock lengths', some(20, { trays: 120, stocks: 4 }), 5_000)
against('2 chambers of 8 trays, 2 stock lengths', some(20, { trays: 16, stocks: 2 }), 5_000)
for (const { id, stock, items } of checks.one_d) {
  const pieces = items.map(([length = 0, count = 0]) => ({ lengthM: length / 1000, count }))
  against(id, [{ pieces, stock: [{ key: 'bar', lengthM: stock / 1000, priceMinor: 1 }], kerfM: 0, keepM: 0 }], 100_000)
}

describe('rectangles', () => {
  bench('mesh of 16 trays from a roll', () => {
    cutRoll({
      pieces: [{ lengthM: 1.24, widthM: 0.86, count: 16 }],
      roll: { key: 'mesh', widthM: 0.9, sold: { by: 'length', stepM: 1 }, priceMinor: 100 },
      kerfM: 0,
    })
  })
  bench('two covers and six flaps from sheets', () => {
    cutSheets({
      pieces: [
        { lengthM: 0.92, widthM: 0.92, count: 2 },
        { lengthM: 0.6, widthM: 0.3, count: 6 },
      ],
      sheets: [{ key: 'ply', lengthM: 2.44, widthM: 1.22, priceMinor: 5000 }],
      kerfM: 0.003,
    })
  })
})
