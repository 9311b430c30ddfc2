/** Lower triangle L of a positive definite matrix N = L·Lᵀ, row by row; null where N is singular to working precision. */
function cholesky(matrix: readonly (readonly number[])[]): number[][] | null {
  const size = matrix.length
  const largest = Math.max(...matrix.map((row, i) => row[i] ?? 0))
  const lower: number[][] = []
  for (let i = 0; i < size; i++) {
    const row: number[] = []
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i]?.[j] ?? 0
      const other = j === i ? row : (lower[j] ?? [])
      for (let k = 0; k < j; k++) sum -= (row[k] ?? 0) * (other[k] ?? 0)
      if (j < i) row.push(sum / (other[j] ?? 1))
      else if (sum > largest * 1e-10) row.push(Math.sqrt(sum))
      else return null
    }
    lower.push(row)
  }
  return lower
}

/** Solves L·Lᵀ·x = b. */
function solveCholesky(lower: readonly (readonly number[])[], rhs: readonly number[]): number[] {
  const x = [...rhs]
  for (const [i, row] of lower.entries()) {
    let sum = x[i] ?? 0
    for (let k = 0; k < i; k++) sum -= (row[k] ?? 0) * (x[k] ?? 0)
    x[i] = sum / (row[i] ?? 1)
  }
  for (let i = lower.length - 1; i >= 0; i--) {
    let sum = x[i] ?? 0
    for (let k = i + 1; k < lower.length; k++) sum -= (lower[k]?.[i] ?? 0) * (x[k] ?? 0)
    x[i] = sum / (lower[i]?.[i] ?? 1)
  }
  return x
}

/** What a model says of its observations at some values of the unknowns. */
export interface Linearised {
  /** Model minus observed: what must be added to each observation. */
  readonly misfit: readonly number[]
  /** Change of each modelled observation with each unknown. */
  readonly slopes: readonly (readonly number[])[]
}

export interface Fit {
  readonly unknowns: readonly number[]
  readonly misfit: readonly number[]
  /** Share of each observation that the others check: 0 not at all, 1 wholly. They add up to the redundancy. */
  readonly checked: readonly number[]
}

const sumOfSquares = (values: readonly number[]): number => values.reduce((sum, value) => sum + value * value, 0)

/** Slopesᵀ · slopes: each observation touches few unknowns, so only those are visited. */
function normalMatrix(slopes: readonly (readonly number[])[], size: number): number[][] {
  const matrix = Array.from({ length: size }, () => Array.from({ length: size }, () => 0))
  for (const row of slopes) {
    const touched = row.flatMap((slope, i) => (slope === 0 ? [] : [i]))
    for (const i of touched) {
      const sums = matrix[i] ?? []
      for (const j of touched) sums[j] = (sums[j] ?? 0) + (row[i] ?? 0) * (row[j] ?? 0)
    }
  }
  return matrix
}

/** Can the unknowns be found from these observations at all? */
export const isDetermined = (slopes: readonly (readonly number[])[], size: number): boolean =>
  cholesky(normalMatrix(slopes, size)) !== null

/**
 * Least squares by Gauss–Newton with equal weights: from a start near the answer, steps that solve the normal equations, halved while they make
 * things worse. Null where the unknowns cannot be found or the steps do not settle.
 */
export function leastSquares(start: readonly number[], model: (unknowns: readonly number[]) => Linearised): Fit | null {
  let unknowns = [...start]
  let here = model(unknowns)
  for (let round = 0; round < 60; round++) {
    const lower = cholesky(normalMatrix(here.slopes, unknowns.length))
    if (lower === null) return null
    const gradient = unknowns.map(
      (_, i) => -here.misfit.reduce((sum, v, row) => sum + v * (here.slopes[row]?.[i] ?? 0), 0),
    )
    const step = solveCholesky(lower, gradient)
    const worst = sumOfSquares(here.misfit)
    let share = 1
    let next = unknowns
    let there = here
    do {
      next = unknowns.map((value, i) => value + share * (step[i] ?? 0))
      there = model(next)
      share /= 2
    } while (share > 1e-6 && !(sumOfSquares(there.misfit) <= worst * (1 + 1e-12) + 1e-24))
    unknowns = next
    here = there
    if (Math.max(...step.map(Math.abs)) < 1e-10)
      return { unknowns, misfit: here.misfit, checked: checkedShares(here.slopes, lower) }
  }
  return null
}

/** 1 − slopes · N⁻¹ · slopesᵀ, on its diagonal. */
const checkedShares = (slopes: Linearised['slopes'], lower: readonly (readonly number[])[]): number[] =>
  slopes.map((row) => {
    const solved = solveCholesky(lower, row)
    return Math.max(0, 1 - row.reduce((sum, slope, i) => sum + slope * (solved[i] ?? 0), 0))
  })
