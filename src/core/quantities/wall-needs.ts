import { cited, counted, derive, sumOf, typed, type Derived } from '../basics/derived.ts'
import type { KilnGeometry } from '../geometry/kiln.ts'
import type { Layout } from '../layout/contract.ts'
import { CATALOGUE_MIXES } from '../plan/catalogue.ts'
import type { Plan } from '../plan/schema.ts'
import { openBedAreaM2 } from './hollow-beds.ts'
import { mortarNeeds } from './mix-needs.ts'
import { need, type Need } from './need.ts'

/** Units, mortar and fill of the walls, from the placed units and never from an area. */
export function wallNeeds(plan: Plan, geometry: KilnGeometry, layout: Layout): Need[] {
  const breakage = typed('waste.units', '1', plan.waste.units, 'waste.units')
  const open = openBeds(plan, layout)
  return [
    need('wall-unit', 'walls', 'walls', unitsBought(layout), breakage),
    ...mortarNeeds(mortarOf(layout, open), 'walls', 'joints', plan),
    ...fillNeeds(plan, layout, open),
    ...faceNeeds(plan, geometry, layout),
    ...dampCourseNeeds(plan, geometry),
  ]
}

/** Beds over hollow cells that line up: nothing of the joint is laid there. Null where the units are solid. */
function openBeds(plan: Plan, layout: Layout): Derived<'m3'> | null {
  const area = openBedAreaM2(layout, plan.walls.unit.cells)
  if (area === 0) return null
  const A = counted('wall.open-beds', 'm2', area)
  const b = counted('wall.bed', 'm', layout.joints.bedM)
  return derive('wall.open-bed-volume', 'm3', 'A · b', { A, b }, (of) => of.A * of.b)
}

/** Mortar of all joints, net, m³: wall less units, lintels, arches and openings, less the beds over hollow cells; then the joints of the arches. */
function mortarOf(layout: Layout, open: Derived<'m3'> | null): Derived<'m3'> {
  const full = counted('wall.joints', 'm3', layout.mortarM3)
  const joints = open === null ? full : derive('wall.mortar', 'm3', 'M − U', { M: full, U: open }, (of) => of.M - of.U)
  const archM3 = layout.openings.reduce((sum, { arch }) => sum + (arch?.mortarM3 ?? 0), 0)
  return archM3 > 0 ? sumOf('wall.mortar-all', 'm3', [joints, counted('arch.mortar', 'm3', archM3)]) : joints
}

/**
 * Units to buy before breakage: every whole one placed, course by course, and those bought to be cut, where one unit gives several pieces.
 * Bricks of arches are counted beside the courses.
 */
export function unitsBought({ courses, units, counts }: Layout): Derived<'piece'> {
  const byCourse = courses.map((course) => {
    let whole = 0
    for (let id = course.firstUnit; id < course.endUnit; id++) if (units[id]?.cutLengthM === null) whole++
    return counted('wall.course-whole', 'piece', whole, { course: course.index })
  })
  const voussoirs = counts.whole - byCourse.reduce((sum, course) => sum + course.value, 0)
  const w = sumOf(
    'wall.whole',
    'piece',
    voussoirs > 0 ? [...byCourse, counted('wall.voussoirs', 'piece', voussoirs)] : byCourse,
  )
  const c = counted('wall.to-cut', 'piece', counts.bought - counts.whole)
  return derive('wall.units', 'piece', 'w + c', { w, c }, (of) => of.w + of.c)
}

/** Fill of the cells that line up, with what ramming takes. */
function fillNeeds(plan: Plan, layout: Layout, open: Derived<'m3'> | null): Need[] {
  const kind = plan.walls.fill
  const fill = CATALOGUE_MIXES.fill.find((one) => one.key === kind)
  if (kind === 'none' || fill === undefined || layout.fillableVoidM3 <= 0) return []
  const cells = counted('fill.cells', 'm3', layout.fillableVoidM3)
  const V = open === null ? cells : derive('fill.void', 'm3', 'H + U', { H: cells, U: open }, (of) => of.H + of.U)
  const k = cited('fill.compaction', '1', fill.compaction, fill.source)
  const loose = derive('fill.loose', 'm3', 'V · k', { V, k }, (of) => of.V * of.k)
  return [need(kind, 'fill', 'fill', loose, typed('waste.fill', '1', plan.waste.fill, 'waste.fill'))]
}

/** Clay lining inside the chambers and render outside, both over the wall above ground with the openings taken out. */
function faceNeeds(plan: Plan, geometry: KilnGeometry, layout: Layout): Need[] {
  const { chamberCount: n, clearSide: a, outsideLength: L, outsideDepth: D, wallAbove: h } = geometry
  const holes = layout.openings.reduce((area, opening) => area + opening.widthM * opening.clearHeightM, 0)
  const O = counted('face.openings', 'm2', holes)
  const needs: Need[] = []
  if (plan.walls.liningM > 0) {
    const t = typed('lining', 'm', plan.walls.liningM, 'walls.liningM')
    const volume = derive(
      'lining.volume',
      'm3',
      '(4 · n · a · h − O) · t',
      { n, a, h, O, t },
      (of) => (4 * of.n * of.a * of.h - of.O) * of.t,
    )
    const k = cited('fill.compaction', '1', 1.25, 'memory')
    const loose = derive('lining.loose', 'm3', 'V · k', { V: volume, k }, (of) => of.V * of.k)
    needs.push(need('clay', 'walls', 'lining', loose, typed('waste.mortar', '1', plan.waste.mortar, 'waste.mortar')))
  }
  if (plan.walls.renderM > 0) {
    const t = typed('render', 'm', plan.walls.renderM, 'walls.renderM')
    const volume = derive(
      'render.volume',
      'm3',
      '(2 · (L + D) · h − O) · t',
      { L, D, h, O, t },
      (of) => (2 * (of.L + of.D) * of.h - of.O) * of.t,
    )
    needs.push(...mortarNeeds(volume, 'walls', 'render', plan))
  }
  return needs
}

/** Damp course over the whole length of the walls, with laps. */
function dampCourseNeeds(plan: Plan, { wallPlanArea: S, wall: t }: KilnGeometry): Need[] {
  if (!plan.ground.dampCourse) return []
  const length = derive('damp-course.length', 'm', 'S / t', { S, t }, (of) => of.S / of.t)
  return [need('damp-course', 'ground', 'damp-course', length, cited('waste.laps', '1', 0.1, 'common-practice'))]
}
