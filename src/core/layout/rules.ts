import type { LayoutFinding, LayoutRequest } from './contract.ts'
import type { Frame } from './frame.ts'
import type { WallRules } from './remembered-fills.ts'
import { CUT_GRID_UM, toMicro } from './micrometres.ts'

/** The bond that can be laid: English bond needs a unit as long as two widths and a joint. */
export function bondLaid(request: LayoutRequest): {
  readonly bond: LayoutRequest['bond']
  readonly findings: LayoutFinding[]
} {
  const { bond, leaf, unit, perpend } = request
  const wanted = leaf === 'single' ? 'stretcher' : bond === 'stretcher' ? 'english' : bond
  const between = unit.lengthM - 2 * unit.widthM
  const fits = between >= perpend.minM - 1e-6 && between <= perpend.maxM + 1e-6
  const laidAs = wanted === 'english' && !fits ? 'header' : wanted
  return {
    bond: laidAs,
    findings:
      laidAs === bond ? [] : [{ kind: 'bond-unsuitable', bond, laidAs, remedy: { kind: 'bond', bond: laidAs, leaf } }],
  }
}

/** Less than this cannot be cut off a unit cleanly: common practice. */
const LEAST_TRIM_UM = 10_000

/** Where few units are sought a cut fewer is worth a little of a unit; where few cuts are, more than one. */
const CUT_WORTH = { units: 0.15, cuts: 1.5 }

/**
 * Laps and pieces of at least a quarter of the unit's length (New Mexico Administrative Code 14.7.4.11 asks a quarter lap of
 * adobe; general practice elsewhere), half aimed at. Across a one-brick wall the smallest piece is a queen closer.
 */
export function rulesFor(request: LayoutRequest, frame: Frame): WallRules {
  const { unitLength, unitWidth, jointUsual } = frame
  const loss = toMicro(request.cutLossM)
  const trim = Math.max(loss, LEAST_TRIM_UM)
  const joints = { jointMin: toMicro(request.perpend.minM), jointUsual, jointMax: toMicro(request.perpend.maxM) }
  const lap = unitLength / 4
  const cutWorth = request.sought === 'cuts' ? CUT_WORTH.cuts : CUT_WORTH.units
  const halfModule = (unitWidth + jointUsual) / 2
  return {
    along: {
      length: unitLength,
      shortest: lap,
      grid: CUT_GRID_UM,
      fine: frame.bond === 'english' ? CUT_GRID_UM / 2 : CUT_GRID_UM,
      coarse: 5 * CUT_GRID_UM,
      goodCuts: goodCuts(unitLength, lap, loss),
      closer: (unitLength + jointUsual) / 2,
      spare: 1,
      trim,
      loss,
      cutWorth,
      lap,
      aim: (unitLength + jointUsual) / 2,
      ...joints,
    },
    across: {
      length: unitWidth,
      shortest: Math.trunc(unitWidth - halfModule),
      grid: Math.trunc(halfModule / 2),
      fine: CUT_GRID_UM / 2,
      coarse: Math.trunc(halfModule / 2),
      goodCuts: [],
      closer: halfModule,
      spare: 2,
      trim,
      loss,
      cutWorth,
      lap,
      aim: halfModule,
      ...joints,
    },
  }
}

/** Cuts on the grid that leave the longest piece of which a unit gives two, or three. */
const goodCuts = (length: number, shortest: number, loss: number): number[] =>
  [2, 3]
    .map((share) => (length + loss) / share - loss)
    .filter((piece) => piece >= shortest)
    .map((piece) => length - Math.trunc(piece / CUT_GRID_UM) * CUT_GRID_UM)
