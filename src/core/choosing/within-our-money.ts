import { fishLoad } from '../fish/load.ts'
import type { CatalogueUnit } from '../plan/catalogue.ts'
import type { Plan } from '../plan/schema.ts'
import { cutMemory, type CuttingEffort } from '../purchase/cut-memory.ts'
import { hasProblem, kilnOn, masonryOf, type Kiln, type Masonry } from '../work-out.ts'
import { boughtIn } from './compare-walls.ts'
import { withWalls, type WallChoice } from './with-walls.ts'

/** Walls of one unit and bond up to one height. The height is a wish: it is built in whole courses. */
export interface Shell {
  readonly walls: WallChoice
  readonly aboveM: number
}

/** What may be varied. Looked at in this order, the first chambers and sides first: small kilns first finds what is cheap early. */
export interface DesignSpace {
  readonly chambers: readonly number[]
  readonly clearSidesM: readonly number[]
  readonly shells: readonly Shell[]
  readonly perChamber: readonly number[]
}

const designsIn = ({ chambers, clearSidesM, shells, perChamber }: DesignSpace): number =>
  chambers.length * clearSidesM.length * shells.length * perChamber.length

export interface DesignLimits {
  readonly budgetMinor: number
  /** Days from the first peg to the first full load; null for any. */
  readonly mostDays: number | null
  /** Money that may go to the hardware shop, minor units; null for any. */
  readonly mostBoughtInMinor: number | null
}

/** One kiln of the space, in figures. `designPlan` makes it the plan. */
export interface Design {
  readonly walls: WallChoice
  readonly chambers: number
  readonly clearSideM: number
  readonly aboveM: number
  readonly perChamber: number
  readonly totalMinor: number
  /** Fish as landed that it takes a day, kg. */
  readonly freshKgPerDay: number
  readonly days: number
  readonly boughtInMinor: number
  readonly units: number
}

/** Where the search stands after a batch. */
export interface SearchState {
  /** Designs looked at, and of these the ones that carry the catch and were worked out as far as their money. */
  readonly done: number
  readonly complete: number
  readonly of: number
  /** Cheapest that fits everything so far; null where none does yet. */
  readonly cheapest: Design | null
  /** Designs that no other beats in both money and daily fish, cheapest first; all within every limit. */
  readonly frontier: readonly Design[]
  /** Units that have no full set of prices: their kilns cannot be weighed against a budget. */
  readonly unpriced: readonly CatalogueUnit['key'][]
  /** Designs left out because something is wrong with them: rails over the fire, a footing that gives way, a head above the wall. */
  readonly unsound: number
  /** Cheapest sound design that carries the catch whatever it costs: says by how much a budget falls short. */
  readonly cheapestAtAll: Design | null
}

/**
 * Every design of the space, each worked out by the core as any plan is: the masonry once for all trays that may stand on it. A generator, so
 * that a caller can show what is found so far, and stop, between batches and as soon as a first design fits; nothing is kept between runs.
 */
export function* withinOurMoney(
  plan: Plan,
  space: DesignSpace,
  limits: DesignLimits,
  batch = 20,
): Generator<SearchState, SearchState> {
  const effort: CuttingEffort = { tidyNodes: 0, known: cutMemory() }
  const of = designsIn(space)
  const shells = space.shells.map(({ walls, aboveM }) => ({ walls, aboveM, withUnit: withWalls(plan, walls) }))
  const unpriced = new Set<string>()
  let done = 0
  let complete = 0
  let unsound = 0
  let cheapest: Design | null = null
  let cheapestAtAll: Design | null = null
  let frontier: readonly Design[] = []
  const state = (): SearchState => ({
    done,
    complete,
    of,
    cheapest,
    frontier,
    unpriced: [...unpriced],
    unsound,
    cheapestAtAll,
  })

  for (const chambers of space.chambers)
    for (const clearSideM of space.clearSidesM)
      for (const { walls, aboveM, withUnit } of shells) {
        const built: Plan = {
          ...withUnit,
          chambers: { count: chambers, clearSideM },
          walls: { ...withUnit.walls, aboveM },
        }
        let masonry: Masonry | null = null
        for (const perChamber of space.perChamber) {
          const one = { ...built, trays: { ...built.trays, perChamber } }
          if (done > 0 && done % batch === 0) yield state()
          done++
          // What cannot carry the catch is not worked out further.
          if (fishLoad(one).chambersNeeded.value > chambers) continue
          masonry ??= masonryOf(built)
          const kiln = kilnOn(masonry, one, effort)
          complete++
          if (kiln.costs.unpriced.length > 0) unpriced.add(walls.unit.key)
          else if (hasProblem(kiln)) unsound++
          else {
            const design = designOf(kiln, { walls, chambers, clearSideM, aboveM, perChamber })
            if (isCheaper(design, cheapestAtAll)) cheapestAtAll = design
            if (fits(design, limits)) {
              const isFirst = cheapest === null
              if (isCheaper(design, cheapest)) cheapest = design
              frontier = withDesign(frontier, design)
              if (isFirst) yield state()
            }
          }
        }
      }
  return state()
}

type Choice = Pick<Design, 'walls' | 'chambers' | 'clearSideM' | 'aboveM' | 'perChamber'>

const designOf = (kiln: Kiln, choice: Choice): Design => ({
  ...choice,
  totalMinor: kiln.costs.total.value,
  freshKgPerDay: kiln.fish.freshPerDay.value,
  days: kiln.schedule.length.value,
  boughtInMinor: boughtIn(kiln.purchase.lines).value,
  units: kiln.layout.counts.bought,
})

const isCheaper = (one: Design, than: Design | null): boolean =>
  than === null ||
  one.totalMinor < than.totalMinor ||
  (one.totalMinor === than.totalMinor && one.freshKgPerDay > than.freshKgPerDay)

/** Whether a design keeps every limit: money in minor units, days of building, money spent on what is bought in. */
export const fits = (design: Design, { budgetMinor, mostDays, mostBoughtInMinor }: DesignLimits): boolean =>
  design.totalMinor <= budgetMinor &&
  (mostDays === null || design.days <= mostDays) &&
  (mostBoughtInMinor === null || design.boughtInMinor <= mostBoughtInMinor)

/** The frontier with one design more, if nothing on it is both as cheap and as large; what it beats leaves. */
function withDesign(frontier: readonly Design[], design: Design): readonly Design[] {
  const beats = (a: Design, b: Design) => a.totalMinor <= b.totalMinor && a.freshKgPerDay >= b.freshKgPerDay
  if (frontier.some((one) => beats(one, design))) return frontier
  return [...frontier.filter((one) => !beats(design, one)), design].toSorted((a, b) => a.totalMinor - b.totalMinor)
}

/** What one design gives up against the best of each kind among others: never negative, 0 where it is the best itself. */
export interface GivenUp {
  readonly freshKgPerDay: number
  readonly days: number
  readonly boughtInMinor: number
  readonly moneyMinor: number
}

/** Fish, days and money by which a design falls behind the best of each among others. */
export function givenUp(design: Design, among: readonly Design[]): GivenUp {
  const all = [design, ...among]
  return {
    freshKgPerDay: Math.max(...all.map((one) => one.freshKgPerDay)) - design.freshKgPerDay,
    days: design.days - Math.min(...all.map((one) => one.days)),
    boughtInMinor: design.boughtInMinor - Math.min(...all.map((one) => one.boughtInMinor)),
    moneyMinor: design.totalMinor - Math.min(...all.map((one) => one.totalMinor)),
  }
}

/** The plan that a design stands for, all else of the user's plan kept. */
export const designPlan = (plan: Plan, { walls, chambers, clearSideM, aboveM, perChamber }: Choice): Plan => {
  const withUnit = withWalls(plan, walls)
  return {
    ...withUnit,
    chambers: { count: chambers, clearSideM },
    walls: { ...withUnit.walls, aboveM },
    trays: { ...withUnit.trays, perChamber },
  }
}
