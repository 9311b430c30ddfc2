import type { LaidShape } from './laid-wall.ts'
import type { WallRules } from './remembered-fills.ts'
import type { PieceRule } from './cut-placing.ts'

/**
 * Least share of a bought unit that a metre of run can cost. A piece c takes (c + loss) of the (ℓ + loss) that a unit
 * gives, and with one joint covers at most c + widest joint; the share per length is least at one end of the range of c.
 */
function leastShare(rule: PieceRule, loss: number): number {
  const at = (piece: number): number => (piece + loss) / ((rule.length + loss) * (piece + rule.jointMax))
  return Math.min(at(rule.shortest), at(rule.length))
}

/**
 * Units that the runs of one course of one wall need at the very least, laps ignored: a run of length R with e joints at
 * its ends must be covered by pieces that each bring one joint, one joint too many where e is 0 and one too few where 2.
 */
export function courseBound(laid: LaidShape, rules: WallRules, loss: number): number {
  let units = 0
  for (const { lie, runs } of laid.shape.tracks) {
    const rule = rules[lie]
    const share = leastShare(rule, loss)
    for (const { from, to, startJoint, endJoint } of runs) {
      const ends = (startJoint ? 1 : 0) + (endJoint ? 1 : 0)
      units += Math.max(0, share * (to - from + (1 - ends) * rule.jointMax))
    }
  }
  return units
}
