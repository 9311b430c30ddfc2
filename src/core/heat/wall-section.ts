import type { Plan } from '../plan/schema.ts'
import { HEAT_DATA, materialOf, type Material } from './heat-data.ts'
import type { Slab, SlabLayer } from './slab.ts'

/** What stands in the hollows: as the plan may choose, or no hollow at all. */
export type Filling = Plan['walls']['fill'] | 'solid'

const STEFAN_BOLTZMANN = 5.670374e-8
const KELVIN = 273.15

/**
 * Resistance of a closed upright air cell, m²K/W: film convection, or conduction where it is narrow, beside radiation between its faces at the mean
 * temperature of a working wall. Form of ISO 6946, annex for air layers, from memory. It hardly grows with width: a wide hollow is no better than a narrow one.
 */
export function cellResistance(widthM: number, meanDegC = HEAT_DATA.cell.meanDegC): number {
  const { convection, airConductivity, emittance } = HEAT_DATA.cell
  const radiation = (4 * STEFAN_BOLTZMANN * (meanDegC + KELVIN) ** 3) / (2 / emittance - 1)
  return 1 / (Math.max(convection, airConductivity / widthM) + radiation)
}

const FAMILY_MATERIAL: Readonly<Record<Plan['walls']['unit']['family'], Material['key']>> = {
  'hollow-block': 'concrete-block',
  'solid-block': 'concrete-block',
  'fired-brick': 'fired-brick',
  'earth-block': 'earth-block',
  'clay-brick': 'clay',
}

const layerOf = (key: Material['key'], thicknessM: number, densityKgM3?: number): SlabLayer => {
  const { conductivity, density, heat } = materialOf(key)
  return { thicknessM, conductivityWmK: conductivity, densityKgM3: densityKgM3 ?? density, heatJkgK: heat }
}

/** Air as a layer: its effective conductivity carries the cell's resistance, its own heat is next to nothing. */
const airLayer = (widthM: number): SlabLayer => ({
  thicknessM: widthM,
  conductivityWmK: widthM / cellResistance(widthM),
  densityKgM3: 1.1,
  heatJkgK: 1006,
})

/** Two things side by side in one layer, by their share of the face. */
function besideEachOther(one: SlabLayer, share: number, other: SlabLayer): SlabLayer {
  const rest = 1 - share
  const densityKgM3 = share * one.densityKgM3 + rest * other.densityKgM3
  const heat = share * one.densityKgM3 * one.heatJkgK + rest * other.densityKgM3 * other.heatJkgK
  return {
    thicknessM: one.thicknessM,
    conductivityWmK: share * one.conductivityWmK + rest * other.conductivityWmK,
    densityKgM3,
    heatJkgK: heat / densityKgM3,
  }
}

interface Cells {
  readonly widthM: number
  /** Share of a course's length that is cell; the rest is web and perpend joint. */
  readonly share: number
}

/** The cells of a unit as one band of equal volume, or none. */
function cellsOf({ walls }: Plan): Cells | null {
  const { cells, lengthM } = walls.unit
  const lengthSumM = cells.reduce((sum, cell) => sum + cell.lengthM, 0)
  if (lengthSumM === 0) return null
  const areaM2 = cells.reduce((sum, cell) => sum + cell.lengthM * cell.widthM, 0)
  return { widthM: areaM2 / lengthSumM, share: lengthSumM / (lengthM + walls.joint.usualM) }
}

/**
 * One leaf, from face to face. Hollow units go by the method of isothermal planes: shell, then webs and cells side by side in one layer, then shell.
 * Dense shells spread heat sideways well enough that a plane through them is nearly of one temperature; the other bound, separate paths that
 * exchange nothing, is `separatePaths`.
 */
function leafLayers(plan: Plan, thicknessM: number, filling: Filling): SlabLayer[] {
  const { unit } = plan.walls
  const key = FAMILY_MATERIAL[unit.family]
  const cells = cellsOf(plan)
  if (cells === null || filling === 'solid') return [layerOf(key, thicknessM, unit.densityKgM3)]
  const shell = layerOf(key, (thicknessM - cells.widthM) / 2, unit.densityKgM3)
  return [
    shell,
    besideEachOther(fillLayer(filling, cells.widthM), cells.share, layerOf(key, cells.widthM, unit.densityKgM3)),
    shell,
  ]
}

const fillLayer = (filling: Exclude<Filling, 'solid'>, widthM: number): SlabLayer =>
  filling === 'none' ? airLayer(widthM) : layerOf(filling, widthM)

/** The bare wall: one leaf, or two with the joint between them where it is one brick thick. */
function wallLayers(plan: Plan, filling: Filling): SlabLayer[] {
  const { unit, leaf } = plan.walls
  if (leaf === 'single') return leafLayers(plan, unit.widthM, filling)
  if (cellsOf(plan) === null || 2 * unit.widthM > unit.lengthM) return leafLayers(plan, unit.lengthM, 'solid')
  const one = leafLayers(plan, unit.widthM, filling)
  const jointM = unit.lengthM - 2 * unit.widthM
  const joint = jointM > 1e-4 ? [layerOf('concrete-block', jointM)] : []
  return [...one, ...joint, ...one]
}

const finish = (key: Material['key'], thicknessM: number) => (thicknessM > 0 ? [layerOf(key, thicknessM)] : [])

/** The outer wall from the fire to the open air: clay lining, wall, render. */
export const outerWall = (plan: Plan, filling: Filling): Slab => ({
  layers: [
    ...finish('clay', plan.walls.liningM),
    ...wallLayers(plan, filling),
    ...finish('render', plan.walls.renderM),
  ],
  outsideFilmWm2K: HEAT_DATA.films.outside,
})

/** Half of a dividing wall. Both its chambers burn alike, so nothing crosses its middle. */
export function sharedWall(plan: Plan, filling: Filling): Slab {
  const layers = wallLayers(plan, filling)
  const halfM = layers.reduce((sum, layer) => sum + layer.thicknessM, 0) / 2
  const near: SlabLayer[] = finish('clay', plan.walls.liningM)
  let reachedM = 0
  for (const layer of layers) {
    const takenM = Math.min(layer.thicknessM, halfM - reachedM)
    if (takenM > 1e-9) near.push({ ...layer, thicknessM: takenM })
    reachedM += layer.thicknessM
    if (reachedM >= halfM - 1e-9) break
  }
  return { layers: near, outsideFilmWm2K: 0 }
}

/** The outer wall as two walls side by side that exchange no heat: through the cells and through the webs. The lower bound of its transmittance. */
export function separatePaths(
  plan: Plan,
  filling: Filling,
): readonly { readonly slab: Slab; readonly share: number }[] {
  const cells = cellsOf(plan)
  if (cells === null || filling === 'solid' || plan.walls.leaf === 'one-brick')
    return [{ slab: outerWall(plan, filling), share: 1 }]
  const whole = outerWall(plan, filling)
  const lining = plan.walls.liningM > 0 ? 1 : 0
  const through = whole.layers.map((layer, index) => (index === lining + 1 ? fillLayer(filling, cells.widthM) : layer))
  return [
    { slab: { ...whole, layers: through }, share: cells.share },
    { slab: outerWall(plan, 'solid'), share: 1 - cells.share },
  ]
}
