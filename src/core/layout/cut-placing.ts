import type { CutPlace } from './layout-choices.ts'
import { SLACK_UM } from './micrometres.ts'

/** What the pieces of one run may be; lengths in micrometres. */
export interface PieceRule {
  /** Along the wall: the unit's length, or its width where units lie across the wall. */
  readonly length: number
  readonly shortest: number
  /** Cuts fall on multiples of this where the joints allow it. */
  readonly grid: number
  /** What a mason can still mark where laps leave no more room. */
  readonly fine: number
  /** A coarser multiple of the grid: shifts are tried there. */
  readonly coarse: number
  /** What is cut off where a unit gives two or three pieces of one length. */
  readonly goodCuts: readonly number[]
  /** What a piece that turns one bond into the next takes off: a queen closer of a header, a half bat of a stretcher. */
  readonly closer: number
  /** Pieces more than the fewest that are worth trying: closers at both ends of a run of headers take up one between them. */
  readonly spare: number
  /** A length for which the offcuts of other runs wait: nothing of it is lost. */
  readonly wanted?: number
  /** Least that a cut can take off. */
  readonly trim: number
  /** What one cut fewer is worth, in units. */
  readonly cutWorth: number
  /** What a cut takes away. */
  readonly loss: number
  readonly lap: number
  /** Lap worth aiming for: half a unit and its joint. */
  readonly aim: number
  readonly jointMin: number
  readonly jointUsual: number
  readonly jointMax: number
}

/** Weight of a breach against a unit: no number of units is worth one. */
export const BREACH = 100
/** Offcuts of one run often serve another, so only half of what a cut loses counts against it. */
const LOST = 0.5
const MOST_STEPS = 160
/** Long runs have shifts enough. */
const MOST_CLOSE = 20
const MOST_PIECES = 256

/** Eight chambers of the smallest units in the longest walls make fewer than 400 pieces. */
const MOST_IN_ROW = 1024
const costBefore = new Float64Array(MOST_IN_ROW)
const costAfter = new Float64Array(MOST_IN_ROW)
const costNow = new Float64Array(MOST_STEPS)
const costNext = new Float64Array(MOST_STEPS)
const shifts = new Int32Array(MOST_STEPS)
const cutCost = new Float64Array(MOST_STEPS * MOST_STEPS)
const cameFrom = new Int16Array(MOST_STEPS * (MOST_PIECES + 1))

/** A short lap counts once for being short and up to four times more the nearer it comes to a straight joint. */
export const shortLapWeight = (distance: number, lap: number): number => {
  const missing = (lap - distance) / lap
  return 1 + 4 * missing * missing
}

/** A lawful lap is the better the nearer it comes to the one aimed at. */
export const lawfulLapCost = (distance: number, aim: number): number =>
  distance < aim ? (1e-3 * (aim - distance)) / aim : 0

/** Across a wall of narrow units what is aimed at may be less than a lap: more cannot be had. */
export const isLawfulLap = (distance: number, { lap, aim }: PieceRule): boolean =>
  distance >= Math.min(aim, lap - SLACK_UM)

const lapCost = (distance: number, rule: PieceRule): number => {
  if (isLawfulLap(distance, rule)) return lawfulLapCost(distance, rule.aim)
  return BREACH * shortLapWeight(distance, rule.lap)
}

const cutAllowed = (place: CutPlace, piece: number, pieces: number): boolean => {
  switch (place) {
    case 'any':
    case 'bays':
    case 'half-bays':
      return true
    case 'first':
      return piece === 1
    case 'last':
      return piece === pieces
    case 'middle':
      return piece === (pieces + 1) >> 1
    case 'ends':
      return piece === 1 || piece === pieces
  }
}

/** Lengths of the pieces of a run and what they cost, in units: cuts, lost offcuts, short laps. */
export interface Trial {
  readonly cost: number
  readonly lengths: readonly number[]
}

/** A run, how many pieces it takes and by how much they are shortened in all: what cuts are placed in. */
export interface Share {
  readonly rule: PieceRule
  readonly avoid: readonly number[]
  readonly place: CutPlace
  readonly pieces: number
  readonly shortened: number
  readonly joint: number
  /** Try shifts that just clear the neighbour's perpends as well. */
  readonly close: boolean
  /** Where the perpend after piece n would lie with no cut before it, less n lengths and joints. */
  readonly offset: number
}

/** What the perpends after pieces 1, 2 … cost, the first of them `from` and each a module on, into a list: nothing where the neighbour's are far. */
function perpendCosts(from: number, { rule, avoid, pieces, joint }: Share, into: Float64Array): number {
  const module = rule.length + joint
  let sum = 0
  let beyond = 0
  for (let n = 1; n < pieces; n++) {
    const at = from + n * module
    while (beyond < avoid.length && (avoid[beyond] ?? 0) < at) beyond++
    const distance = Math.min((avoid[beyond] ?? Infinity) - at, at - (avoid[beyond - 1] ?? -Infinity))
    const cost = distance < rule.aim ? lapCost(distance, rule) : 0
    into[n] = cost
    sum += cost
  }
  return sum
}

/** A cut piece: the cut itself, and half the share of a unit lost where only pieces of this one length come out of it. */
function pieceCost(piece: number, { length, loss, cutWorth, wanted }: PieceRule): number {
  if (wanted !== undefined && wanted === piece) return cutWorth
  const perUnit = Math.max(1, Math.trunc((length + loss) / (piece + loss)))
  return cutWorth + LOST * (1 / perUnit - (piece + loss) / (length + loss))
}

/** What cutting so much off a unit costs: Infinity for a cut that takes too little or leaves too little. */
export const cutCostOf = (cut: number, rule: PieceRule): number =>
  cut < rule.trim || cut > rule.length - rule.shortest ? Infinity : pieceCost(rule.length - cut, rule)

/** No cut, or all of the shortening in one cut, where that does best: perpends before it stay, those after it move. */
export function oneCut(share: Share, below: number): Trial | null {
  const { rule, place, pieces, shortened, offset } = share
  if (shortened > rule.length - rule.shortest || pieces > MOST_IN_ROW) return null
  let cost = shortened === 0 ? 0 : pieceCost(rule.length - shortened, rule)
  if (cost >= below) return null
  cost += perpendCosts(offset - shortened, share, costAfter)
  let best = shortened === 0 || cutAllowed(place, 1, pieces) ? cost : Infinity
  let cut = 1
  if (shortened > 0) {
    perpendCosts(offset, share, costBefore)
    for (let n = 1; n < pieces; n++) {
      // The cut moves from piece n to piece n + 1, and perpend n back to where it lies uncut.
      cost += (costBefore[n] ?? 0) - (costAfter[n] ?? 0)
      if (cost < best - 1e-9 && cutAllowed(place, n + 1, pieces)) {
        best = cost
        cut = n + 1
      }
    }
  }
  if (best >= below) return null
  const lengths = Array.from({ length: pieces }, (_, i) => (i === cut - 1 ? rule.length - shortened : rule.length))
  return { cost: best, lengths }
}

/** Shifts that a perpend could take so as to keep just clear of a neighbour's perpend, on the cut grid. */
function clearShifts({ rule, avoid, pieces, shortened, joint, offset }: Share, add: (shift: number) => void): void {
  for (let piece = 1; piece < pieces; piece++) {
    const at = offset + piece * (rule.length + joint)
    for (const other of avoid) {
      if (other > at + rule.lap || other < at - shortened - rule.lap) continue
      add(Math.trunc((at - other - rule.lap) / rule.fine) * rule.fine)
      add((Math.trunc((at - other + rule.lap - 1) / rule.fine) + 1) * rule.fine)
    }
  }
}

/** Shifts to try, ascending from none to all: a coarse grid, the lengths a unit gives two or three of, and if asked those just clear. */
function shiftsToTry(share: Share): number {
  const { rule, shortened, close } = share
  let count = 0
  const add = (shift: number): void => {
    if (shift < 0 || shift > shortened || count >= MOST_STEPS - 1) return
    let place = count
    while (place > 0 && (shifts[place - 1] ?? 0) > shift) place--
    if (place > 0 && shifts[place - 1] === shift) return
    shifts.copyWithin(place + 1, place, count)
    shifts[place] = shift
    count++
  }
  add(0)
  if (!close || rule.fine < rule.grid || share.pieces > MOST_CLOSE)
    for (let shift = rule.coarse; shift < shortened; shift += rule.coarse) add(shift)
  add(shortened)
  for (const cut of rule.goodCuts) {
    add(cut)
    add(shortened - cut)
  }
  if (close && share.pieces <= MOST_CLOSE) clearShifts(share, add)
  return count
}

/** What each cut between two of the shifts costs. */
function priceCuts(rule: PieceRule, count: number): void {
  for (let from = 0; from < count; from++)
    for (let to = from + 1; to < count; to++)
      cutCost[from * MOST_STEPS + to] = cutCostOf((shifts[to] ?? 0) - (shifts[from] ?? 0), rule)
}

/** No way of cutting costs less: the fewest cuts, and each perpend at the best place that any shift puts it. */
function leastCost({ rule, avoid, pieces, shortened, joint, offset }: Share, below: number): number {
  const module = rule.length + joint
  let cost = rule.cutWorth * Math.trunc((shortened + rule.length - rule.shortest - 1) / (rule.length - rule.shortest))
  for (let piece = 1; piece < pieces && cost < below; piece++) {
    const high = offset + piece * module
    cost += lapCost(mostClearance(high - shortened, high, avoid), rule)
  }
  return cost
}

/** How far the place between two that is farthest from all of the sorted perpends is from the nearest of them. */
function mostClearance(low: number, high: number, avoid: readonly number[]): number {
  let most = -Infinity
  let before = -Infinity
  for (let i = 0; i <= avoid.length; i++) {
    const after = avoid[i] ?? Infinity
    // Between two neighbours the middle is best, or the end of the stretch that lies nearest to it.
    const from = Math.max(low, before)
    const to = Math.min(high, after)
    if (from <= to) {
      const best = Math.min(Math.max((before + after) / 2, from), to)
      const at = before === -Infinity ? from : after === Infinity ? to : best
      most = Math.max(most, Math.min(at - before, after - at))
    }
    if (after > high) break
    before = after
  }
  return most
}

/**
 * Any number of cuts that shorten the pieces by `shortened` in all, at least cost. One stage per piece, one state per shift;
 * a cut moves to a greater shift, a perpend costs by where the shift puts it.
 */
export function severalCuts(share: Share, below: number): Trial | null {
  const { rule, avoid, place, pieces, joint, offset } = share
  if (pieces > MOST_PIECES) return null
  if (leastCost(share, below) >= below) return null
  const count = shiftsToTry(share)
  priceCuts(rule, count)
  costNow.fill(Infinity, 0, count)
  costNow[0] = 0
  for (let piece = 1; piece <= pieces; piece++) {
    const isEnd = piece === pieces
    const row = piece * MOST_STEPS
    for (let step = 0; step < count; step++) {
      costNext[step] = costNow[step] ?? Infinity
      cameFrom[row + step] = step
    }
    if (cutAllowed(place, piece, pieces))
      for (let from = 0; from < count; from++) {
        const before = costNow[from] ?? Infinity
        if (before + rule.cutWorth >= below) continue
        for (let to = isEnd ? Math.max(count - 1, from + 1) : from + 1; to < count; to++) {
          const cost = before + (cutCost[from * MOST_STEPS + to] ?? Infinity)
          if (cost >= (costNext[to] ?? Infinity)) continue
          costNext[to] = cost
          cameFrom[row + to] = from
        }
      }
    const at = offset + piece * (rule.length + joint)
    let beyond = avoid.length
    for (let step = isEnd ? count - 1 : 0; step < count; step++) {
      let cost = costNext[step] ?? Infinity
      if (cost < below && !isEnd) {
        // The perpend moves down as the shift grows, and the nearest of the neighbour's perpends with it.
        const perpend = at - (shifts[step] ?? 0)
        while (beyond > 0 && (avoid[beyond - 1] ?? 0) >= perpend) beyond--
        const distance = Math.min((avoid[beyond] ?? Infinity) - perpend, perpend - (avoid[beyond - 1] ?? -Infinity))
        if (distance < rule.aim) cost += lapCost(distance, rule)
      }
      costNow[step] = cost < below ? cost : Infinity
    }
  }
  const cost = costNow[count - 1] ?? Infinity
  if (cost >= below) return null
  const lengths: number[] = []
  let step = count - 1
  for (let piece = pieces; piece >= 1; piece--) {
    const back = cameFrom[piece * MOST_STEPS + step] ?? step
    lengths.push(rule.length - ((shifts[step] ?? 0) - (shifts[back] ?? 0)))
    step = back
  }
  return { cost, lengths: lengths.reverse() }
}
