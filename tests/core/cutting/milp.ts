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

interface Way {
  readonly stock: number
  /** How many of each length, longest first. */
  readonly holds: readonly number[]
}

interface Ways {
  readonly ways: readonly Way[]
  /** Lengths in tenths of a millimetre, longest first, and how many of each are wanted. */
  readonly lengths: readonly number[]
  readonly wanted: ReadonlyMap<number, number>
}

/** Every full way to fill every stock, written from the job alone: capacity and piece each with a kerf more, in 0.1 mm. */
export function waysToFill(job: LengthJob): Ways {
  const tenths = (m: number): number => Math.round(m * 1e4)
  const kerf = tenths(job.kerfM)
  const wanted = new Map<number, number>()
  for (const { lengthM, count } of job.pieces) wanted.set(tenths(lengthM), (wanted.get(tenths(lengthM)) ?? 0) + count)
  const lengths = [...wanted.keys()].sort((a, b) => b - a)
  const ways: Way[] = []
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
  return { ways, lengths, wanted }
}

/** The job as a whole-number program: how often each way is used, how many of each stock that takes; owned stock is limited and free. */
function milpOf(job: LengthJob, { ways, lengths, wanted }: Ways): string {
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
  const cost = sum(stocks.map((s) => `${String(job.stock[s]?.priceMinor ?? 0)} y${String(s)}`))
  const bounds = stocks.flatMap((s) => {
    const available = job.stock[s]?.available
    return available === undefined ? [] : [` y${String(s)} <= ${String(available)}`]
  })
  const names = [...ways.map((_, k) => `x${String(k)}`), ...stocks.map((s) => `y${String(s)}`)]
  return [
    `Minimize\n obj: ${cost}\nSubject To\n${rows.join('\n')}`,
    ...(bounds.length > 0 ? [`Bounds\n${bounds.join('\n')}`] : []),
    `General\n ${names.join(' ')}\nEnd`,
  ].join('\n')
}

/**
 * Solves to a gap of nothing, in so many nodes at most, which unlike seconds are the same on a busy machine; what is called infeasible with
 * presolve is believed only without it. Its own rounding is left off: nearly all its time went there, and branching proves the same.
 */
export function leastCostByMilp(
  solver: Solver,
  job: LengthJob,
  mostNodes: number,
  ways: Ways = waysToFill(job),
): Solution {
  const model = milpOf(job, ways)
  const options = { mip_max_nodes: mostNodes, mip_rel_gap: 0, mip_abs_gap: 0.5, mip_heuristic_effort: 0 }
  const solution = solver.solve(model, options)
  return solution.Status === 'Infeasible' ? solver.solve(model, { ...options, presolve: 'off' }) : solution
}
