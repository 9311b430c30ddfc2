import type { Box, Head, LayoutFinding, PlacedLintel, PlacedOpening } from './contract.ts'
import { jambAt, type Frame } from './frame.ts'
import type { HeadPlan, LintelSpan } from './heads.ts'
import type { Levels } from './levels.ts'
import { SLACK_UM, toMetres, toMicro } from './micrometres.ts'

const boxOf = (x: number, z: number, dx: number, dy: number, dz: number): Box => ({
  xM: toMetres(x),
  yM: 0,
  zM: toMetres(z),
  dxM: toMetres(dx),
  dyM: toMetres(dy),
  dzM: toMetres(dz),
})

const volume = ({ dxM, dyM, dzM }: Box): number => dxM * dyM * dzM

/** Bearings of a lintel beside the first and the last opening it spans. */
const bearingsOf = (frame: Frame, span: LintelSpan): { readonly left: number; readonly right: number } => ({
  left: jambAt(frame, span.chambers[0] ?? 0) - span.from,
  right: span.to - jambAt(frame, span.chambers.at(-1) ?? 0) - frame.opening,
})

/** The lintels as boxes, m, with their volume less the void of an arch, m³; none over a corbelled opening. */
export function placedLintels(frame: Frame, levels: Levels, plan: HeadPlan, head: Head): PlacedLintel[] {
  const { kind } = head
  if (kind === 'corbel') return []
  const zLow = levels.top(levels.head) + (kind === 'steel' ? 0 : levels.bed)
  const zHigh = kind === 'steel' ? zLow : levels.top(plan.lastCourse)
  return plan.lintels.map((span) => {
    const { left, right } = bearingsOf(frame, span)
    const box = boxOf(span.from, zLow, span.to - span.from, frame.thickness, zHigh - zLow)
    return {
      kind,
      ...box,
      chambers: span.chambers.map((k) => k + 1),
      bearingLeftM: toMetres(left),
      bearingRightM: toMetres(right),
      volumeM3: volume(box) - (plan.arch?.voidM2 ?? 0) * box.dyM * span.chambers.length,
    }
  })
}

/** The openings as boxes, m, with the steps of a corbelled head. */
export function placedOpenings(frame: Frame, levels: Levels, plan: HeadPlan, head: Head): PlacedOpening[] {
  const top = levels.top(levels.count)
  const sill = levels.top(levels.sill)
  const headLevel = levels.top(levels.head)
  const underside = plan.openTop || levels.head >= levels.count ? top : headLevel + levels.bed
  return Array.from({ length: frame.chambers }, (_, k) => {
    const jamb = jambAt(frame, k)
    const boxes = [boxOf(jamb, sill, frame.opening, frame.thickness, underside - sill)]
    plan.steps.forEach((step, i) => {
      const low = levels.top(levels.head + i) + levels.bed
      boxes.push(boxOf(jamb + step, low, frame.opening - 2 * step, frame.thickness, levels.unitHeight + levels.bed))
    })
    return {
      chamber: k + 1,
      xM: toMetres(jamb),
      widthM: toMetres(frame.opening),
      sillM: toMetres(sill),
      headM: toMetres(headLevel),
      undersideM: toMetres(underside),
      clearHeightM: toMetres(underside) + (plan.arch?.head.riseM ?? 0),
      boxes,
      volumeM3: boxes.reduce((sum, box) => sum + volume(box), 0) + (plan.arch?.voidM2 ?? 0) * toMetres(frame.thickness),
      arch: plan.arch?.head ?? null,
      corbel:
        head.kind === 'corbel' && !plan.openTop
          ? {
              stepM: toMetres(plan.steps[0] ?? 0),
              steps: plan.steps.length,
              stepLimitM: toMetres(plan.stepLimit),
              bridgedM: toMetres(plan.bridged),
            }
          : null,
    }
  })
}

/** Bearings that came out shorter than asked, where the wall ends or the corner is reached. */
export function headFindings(frame: Frame, plan: HeadPlan, head: Head): LayoutFinding[] {
  if (head.kind !== 'lintel' && head.kind !== 'steel') return []
  const needed = toMicro(head.bearingM)
  return plan.lintels.flatMap((span) => {
    const { left, right } = bearingsOf(frame, span)
    const least = Math.min(left, right)
    if (least >= needed - SLACK_UM) return []
    const at = left < right ? span.from : span.to
    const courses = plan.firstCourse <= plan.lastCourse ? [plan.firstCourse] : []
    const place = { wall: 'front' as const, courses, xM: toMetres(at), yM: toMetres(frame.thickness / 2) }
    return [{ kind: 'bearing-short' as const, ...place, bearingM: toMetres(least), neededM: head.bearingM }]
  })
}
