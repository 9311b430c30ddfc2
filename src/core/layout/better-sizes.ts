import { toStep } from '../basics/count.ts'
import { chooseWhole } from './choosing.ts'
import type { WholeScore } from './whole-laying.ts'
import type { LayoutRequest } from './contract.ts'
import { prepared } from './lay-out.ts'

/** A clear side near the wanted one and what it would take. */
export interface NearbySize {
  readonly clearSideM: number
  readonly bought: number
  readonly cutPieces: number
  readonly cutLengths: number
  /** Weight of laps, pieces and joints outside their rules; 0 for a wall with none. */
  readonly breaches: number
}

/** As far as it is worth looking, as a share of the wanted side. */
const NEAR = 0.15
const STEP_M = 0.01

const scoreAt = (request: LayoutRequest): WholeScore => chooseWhole(prepared(request).shop).score

/**
 * Clear sides at which rings close without a cut: 4 (a + t) = k·M, as a ring of k units has k joints and its middle line is
 * 4 (a + t) long; and a + 2t = n·M − j, where both the through and the butting course close if 2t + j is a unit.
 */
export function uncutSides({ unit, leaf, perpend }: LayoutRequest, lowM: number, highM: number): number[] {
  const moduleM = unit.lengthM + perpend.usualM
  const thicknessM = leaf === 'single' ? unit.widthM : unit.lengthM
  const sides: number[] = []
  for (let k = 1; (k * moduleM) / 4 <= highM + thicknessM; k++) sides.push((k * moduleM) / 4 - thicknessM)
  for (let n = 1; n * moduleM <= highM + 2 * thicknessM + moduleM; n++)
    sides.push(n * moduleM - perpend.usualM - 2 * thicknessM)
  return sides.filter((side) => side >= lowM && side <= highM)
}

/**
 * Clear sides within 15 % that need fewer cuts than the wanted one, or break fewer rules: each better than every one nearer
 * to what was wanted. The first of the list is the best.
 */
export function betterSizes(request: LayoutRequest, limits = { leastM: 0.4, mostM: 2 }): NearbySize[] {
  const wantedM = request.clearSideM
  const lowM = Math.max(limits.leastM, wantedM * (1 - NEAR))
  const highM = Math.min(limits.mostM, wantedM * (1 + NEAR))
  const sides = new Set(uncutSides(request, lowM, highM).map((side) => toStep(side, 1e-4)))
  for (let side = toStep(lowM, STEP_M); side <= highM; side += STEP_M) sides.add(toStep(side, STEP_M))
  const { turned: _, ...free } = request
  const now = scoreAt(free)
  const sized = [...sides]
    .filter((side) => side >= lowM && Math.abs(side - wantedM) > STEP_M / 20)
    .sort((a, b) => Math.abs(a - wantedM) - Math.abs(b - wantedM))
    .map((clearSideM) => ({ clearSideM, score: scoreAt({ ...free, clearSideM }) }))
  const kept: NearbySize[] = []
  let best = { breaches: now.breaches, cuts: now.cuts }
  for (const { clearSideM, score } of sized) {
    const isBetter = score.breaches < best.breaches || (score.breaches === best.breaches && score.cuts < best.cuts)
    if (!isBetter) continue
    best = { breaches: score.breaches, cuts: score.cuts }
    const { bought, cuts: cutPieces, cutLengths, breaches } = score
    kept.push({ clearSideM, bought, cutPieces, cutLengths, breaches })
  }
  return kept.reverse()
}
