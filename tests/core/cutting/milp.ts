import { createRequire } from 'node:module'
import type { LengthJob } from '../../../src/core/cutting/length-job.ts'

interface Solution {
  readonly Status: string
  readonly ObjectiveValue: number
}
interface Solver {
  readonly solve: (model: string, options: Readonly<Record<string, unknown>>) => Solution
}

/** The HiGHS mixed-integer solver (MIT), a general-purpose library that shares nothing with the code under test. */
export const milpSolver = async (): Promise<Solver> =>
  (createRequire(import.meta.url)('highs') as () => Promise<Solver>)()

/**
 * A cutting job as a whole-number program, written from the job alone: every full way to fill every stock (capacity and
 * piece each with a kerf more, in 0.1 mm), how often each is used, how many of each stock that takes.
 */
function milpOf(job: LengthJob): string {
  const tenths = (m: number): number => Math.round(m * 1e4)
  const kerf = tenths(job.kerfM)
  const wanted = new Map<number, number>()
  for (const { lengthM, count } of job.pieces) wanted.set(tenths(lengthM), (wanted.get(tenths(lengthM)) ?? 0) + count)
  const lengths = [...wanted.keys()].sort((a, b) => b - a)
  const ways: { readonly stock: number; readonly holds: readonly number[] }[] = []
  job.stock.forEach(({ lengthM }, stock) => {
    const fill = (holds: readonly number[], room: number): void => {
      const length = lengths[holds.length]
      if (length === undefined) {
        const isFull = lengths.every((l, i) => room < l + kerf || holds[i] === wanted.get(l))
        if (isFull && holds.some((n) => n > 0)) ways.push({ stock, holds })
        return
      }
      const most = Math.min(wanted.get(length) ?? 0, Math.floor(room / (length + kerf)))
      for (let n = most; n >= 0; n--) fill([...holds, n], room - n * (length + kerf))
    }
    fill([], tenths(lengthM) + kerf)
  })
  const sum = (terms: readonly string[]): string => terms.join(' + ')
  const stocks = [...new Set(ways.map((w) => w.stock))]
  const rows = [
    ...lengths.map((l, i) => {
      const terms = ways.flatMap(({ holds }, k) => ((holds[i] ?? 0) > 0 ? [`${String(holds[i])} x${String(k)}`] : []))
      return ` c${String(i)}: ${sum(terms)} >= ${String(wanted.get(l))}`
    }),
    ...stocks.map((s) => {
      const terms = ways.flatMap(({ stock }, k) => (stock === s ? [`x${String(k)}`] : []))
      return ` n${String(s)}: ${sum(terms)} - y${String(s)} = 0`
    }),
  ]
  const cost = sum(stocks.map((s) => `${String(job.stock[s]?.priceMinor)} y${String(s)}`))
  const names = [...ways.map((_, k) => `x${String(k)}`), ...stocks.map((s) => `y${String(s)}`)]
  return `Minimize\n obj: ${cost}\nSubject To\n${rows.join('\n')}\nGeneral\n ${names.join(' ')}\nEnd`
}

/** Solves to a gap of nothing, in so many nodes at most, which unlike seconds are the same on a busy machine; what is called infeasible with presolve is believed only without it. */
export function leastCostByMilp(solver: Solver, job: LengthJob, mostNodes: number): Solution {
  const model = milpOf(job)
  const options = { mip_max_nodes: mostNodes, mip_rel_gap: 0, mip_abs_gap: 0.5 }
  const solution = solver.solve(model, options)
  return solution.Status === 'Infeasible' ? solver.solve(model, { ...options, presolve: 'off' }) : solution
}
