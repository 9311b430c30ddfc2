import { type Filling, sizeOf } from './bars.ts'
import { isTidier, tidied, type TidyJob } from './few-patterns.ts'
import { at, type Vector } from './vector.ts'

/**
 * Leaves out the pieces that a covering cuts beyond the number asked for, from as few bars as can be, so that what they
 * free is one long offcut; among equal choices the tidiest plan.
 */
export function withoutSurplus(fillings: readonly Filling[], surplus: Vector, job: TidyJob): Filling[] {
  let plan = [...fillings]
  const over = surplus.slice()
  while (over.some((v) => v > 0)) {
    let bestPlan: Filling[] | undefined
    let bestFreed = 0
    let bestPiece: Vector | undefined
    for (const f of plan) {
      const taken = f.piece.map((v, i) => Math.min(v, at(over, i)))
      const freed = sizeOf(taken, job.size)
      if (freed === 0 || freed < bestFreed) continue
      const next = plan.flatMap((g) => (g === f ? lessOnce(g, taken) : [g]))
      const merged = mergeAlike(next)
      if (
        freed > bestFreed ||
        bestPlan === undefined ||
        isTidier(tidied(merged, job).tidiness, tidied(bestPlan, job).tidiness)
      ) {
        bestPlan = merged
        bestFreed = freed
        bestPiece = taken
      }
    }
    if (bestPlan === undefined || bestPiece === undefined) break
    plan = bestPlan
    for (let i = 0; i < over.length; i++) over[i] = at(over, i) - at(bestPiece, i)
  }
  return plan
}

/** One bar of a filling without some pieces, the others as they were; a bar left empty is not taken at all. */
function lessOnce(filling: Filling, taken: Vector): Filling[] {
  const piece = filling.piece.map((v, i) => v - at(taken, i))
  const rest = filling.times > 1 ? [{ ...filling, times: filling.times - 1 }] : []
  return piece.some((v) => v > 0) ? [...rest, { ...filling, piece, times: 1 }] : rest
}

/** Fillings of the same bar with the same pieces, told as one. */
export function mergeAlike(fillings: readonly Filling[]): Filling[] {
  const merged = new Map<string, Filling>()
  for (const f of fillings) {
    const key = `${f.bar.stock}:${f.piece.join(',')}`
    const known = merged.get(key)
    merged.set(key, known === undefined ? f : { ...f, times: known.times + f.times })
  }
  return [...merged.values()]
}
