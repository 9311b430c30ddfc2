import { wholeUp } from '../basics/count.ts'
import type { ArchHead, LayoutFinding } from './contract.ts'
import type { Frame } from './frame.ts'
import type { Levels } from './levels.ts'
import { CUT_GRID_UM, toMetres } from './micrometres.ts'

/** A brick arch and the piece of wall it takes up, micrometres; the piece is as many whole courses high as the arch needs. */
export interface ArchPlan {
  readonly head: ArchHead
  /** Half the width of the piece of wall: from the middle of the opening to beyond the skewback. */
  readonly reach: number
  readonly courses: number
  /** The empty segment under the soffit, m². */
  readonly voidM2: number
  /** Bricks cut to fit round the ring, per arch. */
  readonly fitted: number
  readonly findings: readonly LayoutFinding[]
}

/** Units taller than this are blocks; a block ring is no arch. */
const TALLEST_BRICK_M = 0.13
/** Flatter than a twelfth of the span an arch thrusts too hard, higher than half it is no segment: common practice. */
const FLATTEST = 1 / 12
const STEEPEST = 1 / 2
/** Joints at the back of a ring of uncut bricks open no further than this: common practice. */
const WIDEST_BACK_M = 0.02

/**
 * A segmental arch, one ring of bricks on edge as deep as a brick is wide.
 *
 *   R = (s² ÷ 4 + r²) ÷ 2r      half angle φ = asin(s ÷ 2R)      arc at radius ρ: 2φρ
 *
 * An odd number n of bricks, so that one is the key, shares the soffit with n + 1 joints no thinner than the thinnest allowed.
 */
export function archPlan(frame: Frame, levels: Levels, riseM: number, jointMinM: number): ArchPlan {
  const spanM = toMetres(frame.opening)
  const brickM = toMetres(levels.unitHeight)
  const ringM = toMetres(frame.unitWidth)
  const findings: LayoutFinding[] = []
  if (brickM > TALLEST_BRICK_M)
    findings.push({ kind: 'head-needs-brick', leaf: frame.bond === 'stretcher' ? 'single' : 'one-brick' })
  const [minM, maxM] = [spanM * FLATTEST, spanM * STEEPEST]
  if (riseM < minM - 1e-9 || riseM > maxM + 1e-9) findings.push({ kind: 'arch-rise', riseM, minM, maxM })
  const rise = Math.min(Math.max(riseM, minM), maxM)
  const radiusM = (spanM * spanM) / 4 / (2 * rise) + rise / 2
  const half = Math.asin(Math.min(1, spanM / (2 * radiusM)))
  const soffitM = 2 * half * radiusM
  const backM = 2 * half * (radiusM + ringM)
  const most = Math.max(1, Math.trunc((soffitM - jointMinM) / (brickM + jointMinM)))
  const voussoirs = most % 2 === 1 ? most : most - 1
  const jointAt = (arcM: number): number => (arcM - voussoirs * brickM) / (voussoirs + 1)
  if (jointAt(backM) > WIDEST_BACK_M)
    findings.push({
      kind: 'arch-joint',
      soffitM: jointAt(soffitM),
      backM: jointAt(backM),
      minM: jointMinM,
      maxM: WIDEST_BACK_M,
    })
  const reach = (Math.trunc(((radiusM + ringM) * Math.sin(half) * 1e6) / CUT_GRID_UM) + 1) * CUT_GRID_UM
  const gaugeM = toMetres(levels.unitHeight + levels.bed)
  const courses = wholeUp((rise + ringM + toMetres(levels.bed)) / gaugeM)
  const thicknessM = toMetres(frame.thickness)
  const voidM2 = (radiusM * radiusM * (2 * half - Math.sin(2 * half))) / 2
  const ringM2 = half * ((radiusM + ringM) ** 2 - radiusM ** 2)
  const panelM2 = 2 * toMetres(reach) * (courses * gaugeM - toMetres(levels.bed))
  const moduleM = toMetres(frame.bond === 'stretcher' ? frame.unitLength : frame.unitWidth) + toMetres(frame.jointUsual)
  const fitted = wholeUp((panelM2 - voidM2 - ringM2) / (moduleM * gaugeM))
  const ringBricksM3 = voussoirs * brickM * ringM * thicknessM
  const fittedM3 =
    ((panelM2 - voidM2 - ringM2) / (moduleM * gaugeM)) * (moduleM - toMetres(frame.jointUsual)) * brickM * thicknessM
  return {
    head: {
      spanM,
      riseM: rise,
      radiusM,
      centreBelowSpringingM: radiusM - rise,
      halfAngleDeg: (half * 180) / Math.PI,
      voussoirs,
      ringDepthM: ringM,
      jointAtSoffitM: jointAt(soffitM),
      jointAtBackM: jointAt(backM),
      mortarM3: (panelM2 - voidM2) * thicknessM - ringBricksM3 - fittedM3,
    },
    reach,
    courses,
    voidM2,
    fitted,
    findings,
  }
}
