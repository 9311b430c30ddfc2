import { describe, expect, it } from 'vitest'
import { compareWalls } from '../../../src/core/choosing/compare-walls.ts'
import {
  designPlan,
  fits,
  givenUp,
  withinOurMoney,
  type Design,
  type DesignSpace,
  type SearchState,
} from '../../../src/core/choosing/within-our-money.ts'
import { usualSpace } from '../../../src/core/choosing/usual-space.ts'
import { priceSwings } from '../../../src/core/costs/price-swings.ts'
import { CATALOGUE_UNITS } from '../../../src/core/plan/catalogue.ts'
import type { Plan } from '../../../src/core/plan/schema.ts'
import { hasProblem, workOut } from '../../../src/core/work-out.ts'
import { examplePlan } from '../costs/plans.ts'

const plan = examplePlan('one-chamber')
const unit = (key: string) => {
  const found = CATALOGUE_UNITS.find((one) => one.key === key)
  if (found === undefined) throw new Error(key)
  return found
}
const space: DesignSpace = {
  chambers: [1, 2],
  clearSidesM: [0.68, 0.77],
  shells: ['hollow-450-150-225', 'earth-290-140-90'].map((key) => ({
    walls: { unit: unit(key), leaf: 'single', bond: 'stretcher' },
    aboveM: 0.6,
  })),
  perChamber: [4, 8, 12],
}

const run = (
  limits: Parameters<typeof withinOurMoney>[2],
  of = plan,
  batch = 5,
): { states: SearchState[]; end: SearchState } => {
  const search = withinOurMoney(of, space, limits, batch)
  const states: SearchState[] = []
  for (;;) {
    const next = search.next()
    if (next.done === true) return { states, end: next.value }
    states.push(next.value)
  }
}

/** Every design worked out as a plan of its own, from the very beginning. */
const oneByOne = (): { design: Design; sound: boolean; carries: boolean }[] =>
  space.shells.flatMap(({ walls, aboveM }) =>
    space.clearSidesM.flatMap((clearSideM) =>
      space.chambers.flatMap((chambers) =>
        space.perChamber.map((perChamber) => {
          const choice = { walls, chambers, clearSideM, aboveM, perChamber }
          const worked = workOut(designPlan(plan, choice))
          const hardware = worked.purchase.lines.filter(({ seller }) => seller === 'hardware')
          return {
            design: {
              ...choice,
              totalMinor: worked.costs.total.value,
              freshKgPerDay: worked.fish.freshPerDay.value,
              days: worked.schedule.length.value,
              boughtInMinor: hardware.reduce((sum, { cost }) => sum + (cost?.value ?? 0), 0),
              units: worked.layout.counts.bought,
            },
            sound: !hasProblem(worked) && worked.costs.unpriced.length === 0,
            carries: worked.fish.chambersNeeded.value <= chambers,
          }
        }),
      ),
    ),
  )

describe('within our money', () => {
  const all = oneByOne()
  const able = all.filter(({ sound, carries }) => sound && carries).map(({ design }) => design)
  const dearest = Math.max(...able.map(({ totalMinor }) => totalMinor))
  const least = Math.min(...able.map(({ totalMinor }) => totalMinor))

  it('agrees with every design worked out one by one', () => {
    expect(able.length).toBeGreaterThan(5)
    for (const budgetMinor of [least, Math.round((least + dearest) / 2), dearest * 2]) {
      const { end } = run({ budgetMinor, mostDays: null, mostBoughtInMinor: null })
      const affordable = able.filter(({ totalMinor }) => totalMinor <= budgetMinor)
      expect(end.done).toBe(all.length)
      expect(end.of).toBe(all.length)
      expect(end.cheapest?.totalMinor).toBe(Math.min(...affordable.map(({ totalMinor }) => totalMinor)))
      const best = affordable.filter(
        (one) =>
          !affordable.some(
            (other) => other !== one && other.totalMinor <= one.totalMinor && other.freshKgPerDay >= one.freshKgPerDay,
          ),
      )
      expect(end.frontier.map(({ totalMinor, freshKgPerDay }) => [totalMinor, freshKgPerDay])).toEqual(
        best
          .toSorted((a, b) => a.totalMinor - b.totalMinor)
          .map(({ totalMinor, freshKgPerDay }) => [totalMinor, freshKgPerDay]),
      )
    }
  })

  it('agrees with brute force under limits of days and of what is bought in, alone and together', () => {
    const middle = (of: (design: Design) => number) => able.map(of).toSorted((a, b) => a - b)[able.length >> 1] ?? 0
    const [days, bought] = [middle((one) => one.days), middle((one) => one.boughtInMinor)]
    for (const [mostDays, mostBoughtInMinor] of [
      [days, null],
      [null, bought],
      [days, bought],
    ] as const) {
      const within = able.filter(
        (one) =>
          one.totalMinor <= dearest - 1 &&
          one.days <= (mostDays ?? Infinity) &&
          one.boughtInMinor <= (mostBoughtInMinor ?? Infinity),
      )
      expect(within.length).toBeGreaterThan(0)
      expect(within.length).toBeLessThan(able.length)
      const { end } = run({ budgetMinor: dearest - 1, mostDays, mostBoughtInMinor })
      expect(end.cheapest?.totalMinor).toBe(Math.min(...within.map(({ totalMinor }) => totalMinor)))
      expect(Math.max(...end.frontier.map((one) => one.freshKgPerDay))).toBe(
        Math.max(...within.map((one) => one.freshKgPerDay)),
      )
    }
  })

  it('never shows a design over a limit, and says what the cheapest would cost', () => {
    const tight = { budgetMinor: least - 1, mostDays: null, mostBoughtInMinor: null }
    const { end } = run(tight)
    expect(end.cheapest).toBeNull()
    expect(end.frontier).toEqual([])
    expect(end.cheapestAtAll?.totalMinor).toBe(least)
    const days = Math.min(...able.map((design) => design.days))
    const limits = { budgetMinor: dearest, mostDays: days, mostBoughtInMinor: null }
    const quick = run(limits).end
    expect(quick.frontier.length).toBeGreaterThan(0)
    expect(quick.frontier.every((design) => fits(design, limits))).toBe(true)
    const bought = Math.min(...able.map((design) => design.boughtInMinor))
    const local = run({ budgetMinor: dearest, mostDays: null, mostBoughtInMinor: bought }).end
    expect(local.frontier.every((design) => design.boughtInMinor <= bought)).toBe(true)
    expect(local.cheapest).not.toBeNull()
  })

  it('says what each design on the frontier gives up: fish against money, never both', () => {
    const { frontier } = run({ budgetMinor: dearest, mostDays: null, mostBoughtInMinor: null }).end
    const [cheapest] = frontier
    const largest = frontier.at(-1)
    if (cheapest === undefined || largest === undefined) throw new Error('no frontier')
    expect(givenUp(cheapest, frontier)).toMatchObject({
      moneyMinor: 0,
      freshKgPerDay: largest.freshKgPerDay - cheapest.freshKgPerDay,
    })
    expect(givenUp(largest, frontier)).toMatchObject({
      moneyMinor: largest.totalMinor - cheapest.totalMinor,
      freshKgPerDay: 0,
    })
    for (const design of frontier)
      expect(Object.values(givenUp(design, frontier)).every((value) => Number(value) >= 0)).toBe(true)
  })

  it('shows where it stands between batches and can be left at any time', () => {
    const { states } = run({ budgetMinor: dearest, mostDays: null, mostBoughtInMinor: null })
    expect(states.map(({ done }) => done).filter((done) => done % 5 === 0)).toEqual([5, 10, 15, 20])
    // Between two batches only the first design that fits is told: nobody waits for the rest of its batch.
    const between = states.filter(({ done }) => done % 5 !== 0)
    const first = states.findIndex(({ cheapest }) => cheapest !== null)
    expect(between).toEqual(states[first]?.done === 5 ? [] : [states[first]])
    const search = withinOurMoney(plan, space, { budgetMinor: dearest, mostDays: null, mostBoughtInMinor: null }, 1)
    expect(search.next().done).toBe(false)
    search.return({ ...(states[0] as SearchState) })
    expect(search.next().done).toBe(true)
  })

  it('names units without prices and never takes them for cheap', () => {
    const others = Object.fromEntries(Object.entries(plan.offers).filter(([, offer]) => offer.item !== 'wall-unit'))
    const { end } = run({ budgetMinor: dearest, mostDays: null, mostBoughtInMinor: null }, { ...plan, offers: others })
    expect(end.unpriced).toEqual(['hollow-450-150-225', 'earth-290-140-90'])
    expect(end.cheapest).toBeNull()
  })
})

describe('walls side by side', () => {
  it('are what each plan with those walls gives, with the published lives and their disagreement', () => {
    const [hollow, earth] = compareWalls(
      plan,
      space.shells.map(({ walls }) => walls),
    )
    if (hollow === undefined || earth === undefined) throw new Error('two were asked for')
    expect(hollow.total.value).toBe(workOut(plan).costs.total.value)
    expect(hollow.lives.map(({ source }) => source).toSorted()).toEqual(['fao-tp535', 'zinsou-wentholt'])
    expect(earth.plan.mixes.mortar.cement).toBe(0)
    expect(earth.carried.value).toBeCloseTo(earth.units.value * earth.unitMass.value, 9)
    // 450 × 150 × 225 mm, a third hollow, of 2000 kg/m³: 0.0151875 · 0.67 · 2000 = 20.35 kg.
    expect(hollow.unitMass.value).toBeCloseTo(20.35, 2)
  })
})

describe('what matters most', () => {
  it('moves the total by no more than the price moved, up and down, longest first', () => {
    const { needs, purchase, costs } = workOut(plan)
    const swings = priceSwings(plan, needs)
    expect(swings.map(({ item }) => item).toSorted()).toEqual(
      [...new Set(purchase.lines.map(({ item }) => item))].toSorted(),
    )
    for (const { item, lowMinor, highMinor, spanMinor } of swings) {
      expect([item, lowMinor <= costs.total.value]).toEqual([item, true])
      expect([item, highMinor >= costs.total.value]).toEqual([item, true])
      expect(spanMinor).toBe(highMinor - lowMinor)
    }
    expect(swings.every((one, at) => at === 0 || (swings[at - 1]?.spanMinor ?? 0) >= one.spanMinor)).toBe(true)
  })
})

describe('the usual space', () => {
  it('holds the plan’s own unit as it was measured in place of the catalogue’s, joint and all, and its kilns are real plans', () => {
    const own = {
      ...plan,
      walls: {
        ...plan.walls,
        unit: { ...plan.walls.unit, lengthM: 0.444, heightM: 0.219 },
        joint: { minM: 0.008, usualM: 0.012, maxM: 0.02 },
        samples: [[0.444, 0.15, 0.219]] as Plan['walls']['samples'],
      },
    }
    const { shells } = usualSpace(own)
    const mine = shells.filter(({ walls }) => walls.unit.key === own.walls.unit.key)
    expect(mine.map(({ walls }) => [walls.unit.lengthM, walls.unit.heightM, walls.unit.joint.usualM])).toEqual([
      [0.444, 0.219, 0.012],
    ])
    const small = { ...space, shells: mine, perChamber: [8], clearSidesM: [0.77] }
    const search = withinOurMoney(own, small, { budgetMinor: 1e9, mostDays: null, mostBoughtInMinor: null })
    let next = search.next()
    while (next.done !== true) next = search.next()
    const { cheapestAtAll } = next.value
    if (cheapestAtAll === null) throw new Error('nothing can be built')
    const taken = designPlan(own, cheapestAtAll)
    expect(taken.walls).toMatchObject({ unit: own.walls.unit, joint: own.walls.joint, samples: own.walls.samples })
    expect(workOut(taken).costs.total.value).toBe(cheapestAtAll.totalMinor)
    expect(workOut(taken).layout.counts.bought).toBe(cheapestAtAll.units)
  })

  it('adds a unit that no catalogue knows', () => {
    const key = 'made-at-the-landing'
    const own = { ...plan, walls: { ...plan.walls, unit: { ...plan.walls.unit, key, lengthM: 0.4 } } }
    const offers = { ...plan.offers, own: { ...plan.offers['block'], variant: key } as Plan['offers'][string] }
    expect(usualSpace({ ...own, offers }).shells.map(({ walls }) => walls.unit.key)).toContain(key)
  })

  it('holds walls of priced units only, and the plan’s own clear side', () => {
    const { block } = plan.offers
    const others = Object.fromEntries(Object.entries(plan.offers).filter(([, offer]) => offer.item !== 'wall-unit'))
    if (block === undefined) throw new Error('the example has a price for blocks')
    const named = { ...block, variant: 'earth-290-140-90' }
    const { shells, clearSidesM, chambers } = usualSpace({ ...plan, offers: { ...others, named } })
    expect(shells.map(({ walls }) => walls.unit.key)).toEqual(['earth-290-140-90'])
    expect(clearSidesM).toContain(plan.chambers.clearSideM)
    expect(chambers).toEqual([1, 2, 3, 4, 5, 6, 7, 8])
    expect(usualSpace({ ...plan, offers: others }).shells).toEqual([])
  })
})
