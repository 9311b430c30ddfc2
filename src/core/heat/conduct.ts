import { lotsFor } from '../basics/count.ts'
import { gridOf, type Slab, type SlabGrid } from './slab.ts'

/** A stretch of time with one gas temperature at the inner face. */
export interface HeatPhase {
  readonly hours: number
  readonly gasDegC: number
  readonly insideFilmWm2K: number
}

export interface ConductOptions {
  readonly airDegC: number
  /** Temperature of every cell at the start, or one for all. */
  readonly start: number | Float64Array
  /** Longest step, s, and largest cell, m. */
  readonly stepS?: number
  readonly cellM?: number
  /** A record for the chart about every so many seconds; none by default. */
  readonly everyS?: number
}

export interface HeatMoment {
  readonly atHours: number
  readonly insideFaceDegC: number
  readonly outsideFaceDegC: number
}

/** One phase as it went, per m² of wall. */
export interface PhaseHeat {
  readonly inJm2: number
  readonly outJm2: number
}

export interface Conducted {
  readonly phases: readonly PhaseHeat[]
  readonly inJm2: number
  readonly outJm2: number
  /** Heat in the wall at the end less that at the start. */
  readonly storedJm2: number
  readonly peakOutsideDegC: number
  readonly peakOutsideHours: number
  readonly temperatures: Float64Array
  readonly moments: readonly HeatMoment[]
}

const USUAL_STEP_S = 60
const USUAL_CELL_M = 0.005

/** Film and first half cell in series, W/m²K; a film of 0 is a face that lets nothing through. */
const inSeries = (film: number, face: number) => (film === 0 ? 0 : 1 / (1 / film + 1 / face))

/**
 * Transient conduction through a layered wall in one dimension: finite volumes in space, Crank–Nicolson in time.
 *
 * Each phase begins with four backward half steps, which damp the jump of the gas temperature that Crank–Nicolson alone would ring on; they share its
 * matrix, so one factorisation serves a whole phase. Stable at any step; heat in − heat out = heat stored to rounding, because the sums use the scheme's own flows.
 */
export function conduct(slab: Slab, phases: readonly HeatPhase[], options: ConductOptions): Conducted {
  const grid = gridOf(slab, options.cellM ?? USUAL_CELL_M)
  const cells = grid.capacity.length
  const last = cells - 1
  const { airDegC } = options
  const temperature = new Float64Array(cells)
  if (typeof options.start === 'number') temperature.fill(options.start)
  else temperature.set(options.start)
  const startHeat = heatIn(grid, temperature)
  const outward = inSeries(slab.outsideFilmWm2K, grid.conductance[last] ?? 0)
  const done: PhaseHeat[] = []
  const moments: HeatMoment[] = []
  let peakOutsideDegC = Number.NEGATIVE_INFINITY
  let peakOutsideHours = 0
  let atS = 0
  let nextMomentS = 0
  const look = (inward: number, gasDegC: number) => {
    const flow = outward * ((temperature[last] ?? 0) - airDegC)
    // Where nothing leaves, the face has the temperature of the last cell.
    const outsideFaceDegC = outward === 0 ? (temperature[last] ?? 0) : airDegC + flow / slab.outsideFilmWm2K
    if (outsideFaceDegC > peakOutsideDegC) {
      peakOutsideDegC = outsideFaceDegC
      peakOutsideHours = atS / 3600
    }
    if (options.everyS === undefined || atS < nextMomentS - 1e-6) return
    nextMomentS += options.everyS
    const first = temperature[0] ?? 0
    const insideFaceDegC = first + (inward * (gasDegC - first)) / grid.facing
    moments.push({ atHours: atS / 3600, insideFaceDegC, outsideFaceDegC })
  }
  for (const phase of phases) {
    const inward = inSeries(phase.insideFilmWm2K, grid.facing)
    const seconds = phase.hours * 3600
    const steps = Math.max(2, lotsFor(seconds, options.stepS ?? USUAL_STEP_S))
    const stepS = seconds / steps
    const solve = solver(grid, inward, outward, phase.gasDegC, airDegC, stepS / 2)
    let inJm2 = 0
    let outJm2 = 0
    if (done.length === 0) look(inward, phase.gasDegC)
    for (let step = 0; step < steps; step++) {
      const half = step < 2
      for (let part = half ? 0 : 1; part < 2; part++) {
        const firstBefore = temperature[0] ?? 0
        const lastBefore = temperature[last] ?? 0
        solve(temperature, half)
        const firstMean = half ? (temperature[0] ?? 0) : (firstBefore + (temperature[0] ?? 0)) / 2
        const lastMean = half ? (temperature[last] ?? 0) : (lastBefore + (temperature[last] ?? 0)) / 2
        const spanS = half ? stepS / 2 : stepS
        inJm2 += spanS * inward * (phase.gasDegC - firstMean)
        outJm2 += spanS * outward * (lastMean - airDegC)
      }
      atS += stepS
      look(inward, phase.gasDegC)
    }
    done.push({ inJm2, outJm2 })
  }
  return {
    phases: done,
    inJm2: done.reduce((sum, phase) => sum + phase.inJm2, 0),
    outJm2: done.reduce((sum, phase) => sum + phase.outJm2, 0),
    storedJm2: heatIn(grid, temperature) - startHeat,
    peakOutsideDegC,
    peakOutsideHours,
    temperatures: temperature,
    moments,
  }
}

function heatIn({ capacity }: SlabGrid, temperature: Float64Array): number {
  let sum = 0
  for (let cell = 0; cell < capacity.length; cell++) sum += (capacity[cell] ?? 0) * (temperature[cell] ?? 0)
  return sum
}

/**
 * One step in place: (C + w·K)·u₁ = C·u₀ + w·b for a backward half step, with w the half step; Crank–Nicolson's right side adds w·(b − K·u₀).
 * K and b are the conduction matrix and its boundary terms. Factorised once by the Thomas algorithm.
 */
function solver(grid: SlabGrid, inward: number, outward: number, gasDegC: number, airDegC: number, weightS: number) {
  const cells = grid.capacity.length
  const last = cells - 1
  const capacity = Array.from(grid.capacity, (of) => of / weightS)
  // One more conductance than cells: of the inner face, between cells, of the outer face.
  const across = [inward, ...Array.from(grid.conductance.subarray(0, last)), outward]
  const upper = new Float64Array(cells)
  const scale = new Float64Array(cells)
  const right = new Float64Array(cells)
  let above = 0
  for (let cell = 0; cell < cells; cell++) {
    const before = across[cell] ?? 0
    const after = across[cell + 1] ?? 0
    const pivot = (capacity[cell] ?? 0) + before + after - (cell === 0 ? 0 : before * above)
    scale[cell] = 1 / pivot
    above = after / pivot
    upper[cell] = above
  }
  const gasDrive = inward * gasDegC
  const airDrive = outward * airDegC
  return (u: Float64Array, half: boolean): void => {
    let carried = 0
    let here = u[0] ?? 0
    let flowIn = half ? 0 : inward * (gasDegC - here)
    for (let cell = 0; cell < cells; cell++) {
      const next = cell === last ? airDegC : (u[cell + 1] ?? 0)
      const flowOut = half ? 0 : (across[cell + 1] ?? 0) * (here - next)
      let side = (capacity[cell] ?? 0) * here + flowIn - flowOut
      if (cell === 0) side += gasDrive
      else side += (across[cell] ?? 0) * carried
      if (cell === last) side += airDrive
      carried = side * (scale[cell] ?? 0)
      right[cell] = carried
      here = next
      flowIn = flowOut
    }
    let solved = 0
    for (let cell = last; cell >= 0; cell--) {
      solved = (right[cell] ?? 0) + (upper[cell] ?? 0) * solved
      u[cell] = solved
    }
  }
}
