import { modulesToCover } from '../basics/count.ts'

/** One layer of a wall, from the fire outwards: m, W/mK, kg/m³, J/kgK. */
export interface SlabLayer {
  readonly thicknessM: number
  readonly conductivityWmK: number
  readonly densityKgM3: number
  readonly heatJkgK: number
}

/** A wall as layers. `outsideFilmWm2K` 0 lets no heat out: the middle plane of a wall with fire on both sides. */
export interface Slab {
  readonly layers: readonly SlabLayer[]
  readonly outsideFilmWm2K: number
}

/** Thermal resistance of the layers alone, m²K/W. */
export const layersResistance = ({ layers }: Slab): number =>
  layers.reduce((sum, layer) => sum + layer.thicknessM / layer.conductivityWmK, 0)

/** Steady transmittance U = 1 / (1 / h_i + Σ d / λ + 1 / h_o), W/m²K. */
export const transmittance = (slab: Slab, insideFilmWm2K: number): number =>
  slab.outsideFilmWm2K === 0 ? 0 : 1 / (1 / insideFilmWm2K + layersResistance(slab) + 1 / slab.outsideFilmWm2K)

/** A slab cut into cells; temperatures stand in the middle of each. Conductances per m², W/m²K; capacities J/m²K. */
export interface SlabGrid {
  readonly capacity: Float64Array
  /** Between cell i and the next; the last entry is from the last cell to the outer face. */
  readonly conductance: Float64Array
  /** From the inner face to the first cell. */
  readonly facing: number
}

/** Cells of at most `cellM`, at least two a layer, none across two layers. */
export function gridOf({ layers }: Slab, cellM: number): SlabGrid {
  const capacity: number[] = []
  const halves: number[] = []
  for (const layer of layers) {
    const count = Math.max(2, modulesToCover(layer.thicknessM, cellM))
    const sizeM = layer.thicknessM / count
    for (let cell = 0; cell < count; cell++) {
      capacity.push(sizeM * layer.densityKgM3 * layer.heatJkgK)
      halves.push(sizeM / 2 / layer.conductivityWmK)
    }
  }
  const conductance = halves.map((half, index) => 1 / (half + (halves[index + 1] ?? 0)))
  return {
    capacity: Float64Array.from(capacity),
    conductance: Float64Array.from(conductance),
    facing: 1 / (halves[0] ?? 1),
  }
}
