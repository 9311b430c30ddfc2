import fc from 'fast-check'
import { CATALOGUE_SOILS, CATALOGUE_UNITS } from '../../src/core/plan/catalogue.ts'
import { newPlan, wallsFor } from '../../src/core/plan/defaults.ts'
import type { Offer, Plan } from '../../src/core/plan/schema.ts'
import { ITEM_KEYS, ITEMS, type Item } from '../../src/core/quantities/items.ts'
import { field, restOfPlan } from './plan-parts.ts'

/** An offer of an item in lots near the usual ones. */
const offerOf = (item: keyof typeof ITEMS): fc.Arbitrary<Offer> => {
  const usual: Item = ITEMS[item]
  return fc.record({
    item: fc.constant(item as string),
    lotSize: fc.constantFrom(1, 0.5, 2).map((by) => usual.lotSize * by),
    lotName: fc.constant(usual.lotName),
    priceMinor: fc.option(fc.integer({ min: 0, max: 100_000 }), { nil: null, freq: 10 }),
    seller: fc.constant(usual.seller),
    sellerName: fc.constantFrom('', 'Stall by the well', 'North yard'),
    place: fc.constant(''),
    seen: fc.constant(null),
    leastLots: fc.constantFrom(1, 1, 1, 3),
    transportMinor: fc.constantFrom(0, 0, 1500),
    tripLots: fc.constantFrom(0, 0, 10),
    widthM: fc.constant(usual.widthM ?? 0),
    chosen: fc.boolean(),
  })
}

const offers: fc.Arbitrary<Plan['offers']> = fc
  .array(fc.constantFrom(...ITEM_KEYS).chain(offerOf), { maxLength: 30 })
  .map((list) => Object.fromEntries(list.map((offer, at) => [`offer-${String(at)}`, offer])))

const byNumber = <T>(name: string, list: readonly T[]): Record<string, T> =>
  Object.fromEntries(list.map((one, at) => [`${name}-${String(at)}`, one]))

const anyMember = fc.constantFrom('ana', 'ben', 'gone')

const anySpending: fc.Arbitrary<Plan['spending'][string]> = fc.record({
  kind: fc.constantFrom<'purchase' | 'return'>('purchase', 'purchase', 'return'),
  item: fc.constantFrom<string>(...ITEM_KEYS, 'something-else'),
  quantity: fc.integer({ min: 0, max: 400 }).map((quarters) => quarters / 4),
  paidMinor: fc.integer({ min: 0, max: 500_000 }),
  seller: fc.constant<Offer['seller']>('hardware'),
  sellerName: fc.constant(''),
  instead: fc.constant(''),
  day: fc.constant(null),
  paidBy: fc.option(anyMember, { nil: null }),
  receipt: fc.constant(null),
})

const anyContribution: fc.Arbitrary<Plan['contributions'][string]> = fc.oneof(
  fc.record({
    kind: fc.constantFrom<'cash' | 'material'>('cash', 'material'),
    member: anyMember,
    promisedMinor: fc.integer({ min: 0, max: 100_000 }),
    givenMinor: fc.integer({ min: 0, max: 100_000 }),
    note: fc.constant(''),
    day: fc.constant(null),
  }),
  fc.record({
    kind: fc.constant('labour' as const),
    member: anyMember,
    promisedDays: fc.integer({ min: 0, max: 20 }).map((halves) => halves / 2),
    givenDays: fc.integer({ min: 0, max: 20 }).map((halves) => halves / 2),
    rateMinor: fc.integer({ min: 0, max: 9999 }),
    note: fc.constant(''),
    day: fc.constant(null),
  }),
)

const plainPlan: fc.Arbitrary<Plan> = fc
  .record({
    unit: fc.constantFrom(...CATALOGUE_UNITS),
    soil: fc.constantFrom(...CATALOGUE_SOILS),
    digits: fc.constantFrom(0, 2, 3),
    freshKgPerDay: field('catch.freshKgPerDay', 1, 500),
    count: fc.integer({ min: 1, max: 8 }),
    clearSideM: field('chambers.clearSideM', 0.5, 1.4),
    aboveM: field('walls.aboveM', 0.4, 1),
    belowM: field('walls.belowM', 0, 0.5),
    liningM: fc.constantFrom(0, 0, 0.03),
    renderM: fc.constantFrom(0, 0, 0.015),
    opening: fc.record({ widthM: field('openings.widthM', 0.2, 0.5), heightM: field('openings.heightM', 0.2, 0.5) }),
    head: fc.constantFrom<Plan['openings']['head']>('lintel', 'lintel', 'steel', 'corbel', 'arch'),
    footing: fc.constantFrom<Plan['ground']['footing']>('strip', 'pad'),
    projectionM: field('ground.projectionM', 0, 0.3),
    thicknessM: field('ground.thicknessM', 0.05, 0.3),
    extras: fc.record({
      hardcoreM: fc.constantFrom(0, 0.1),
      hearthM: fc.constantFrom(0, 0.1),
      apronM: fc.constantFrom(0, 0.5),
      dampCourse: fc.boolean(),
    }),
    fill: fc.constantFrom<Plan['walls']['fill']>('none', 'sand', 'clay'),
    trays: fc.record({
      perChamber: fc.integer({ min: 1, max: 15 }),
      spares: fc.integer({ min: 0, max: 5 }),
      railThicknessM: fc.constantFrom(0.02, 0.025, 0.05),
      setbackM: fc.constantFrom(0.01, 0.03, 0.05),
      corner: fc.constantFrom<Plan['trays']['corner']>('butt', 'lap', 'half-lap'),
      battens: fc.integer({ min: 0, max: 3 }),
      cover: fc.constantFrom<Plan['trays']['cover']>('board', 'sheet', 'framed'),
    }),
    mortar: fc.constantFrom(
      { cement: 1, clay: 0, sand: 5, dryFactor: 1.33 },
      { cement: 0, clay: 1, sand: 2, dryFactor: 1.33 },
      { cement: 1, clay: 1, sand: 6, dryFactor: 1.3 },
    ),
    waste: fc.constantFrom(0, 0.05, 0.1),
    contingency: fc.constantFrom(0, 0.05, 0.13),
    budgetMinor: fc.option(fc.integer({ min: 0, max: 10_000_000 }), { nil: null }),
    offers,
    spending: fc.array(anySpending, { maxLength: 6 }),
    contributions: fc.array(anyContribution, { maxLength: 4 }),
  })
  .map((of) => {
    const plan = newPlan({
      id: 'plan',
      name: 'Any plan',
      freshKgPerDay: of.freshKgPerDay,
      unitKey: of.unit.key,
      soil: of.soil.key,
      currency: { code: 'XTS', digits: of.digits },
    })
    return {
      ...plan,
      chambers: { count: of.count, clearSideM: of.clearSideM },
      walls: {
        ...plan.walls,
        ...wallsFor(of.unit),
        fill: of.unit.cells.length > 0 ? of.fill : 'none',
        aboveM: of.aboveM,
        belowM: of.belowM,
        liningM: of.liningM,
        renderM: of.renderM,
      },
      openings: { ...plan.openings, ...of.opening, head: of.head },
      ground: {
        ...plan.ground,
        ...of.extras,
        footing: of.footing,
        projectionM: of.projectionM,
        thicknessM: of.thicknessM,
      },
      trays: { ...plan.trays, ...of.trays },
      mixes: { ...plan.mixes, mortar: of.mortar },
      waste: { ...plan.waste, units: of.waste, timber: of.waste, mesh: of.waste },
      offers: of.offers,
      spending: byNumber('spent', of.spending),
      members: { ana: { name: 'Net menders', weight: 2 }, ben: { name: 'Boat crew', weight: 1 } },
      contributions: byNumber('gift', of.contributions),
      payouts: { one: { member: 'ana', amountMinor: 50, day: null } },
      money: { budgetMinor: of.budgetMinor, contingency: of.contingency },
    }
  })

/** Plans over the whole space of what a user may decide and the limits let through: `plans.test.ts` holds that no field is forgotten. */
export const anyPlan: fc.Arbitrary<Plan> = fc.tuple(plainPlan, restOfPlan).map(([plan, change]) => change(plan))

/** The same before anything is built: nothing ticked, laid, measured or broken. */
export const unbuiltPlan: fc.Arbitrary<Plan> = anyPlan.map((plan) => ({
  ...plan,
  build: { ...plan.build, ticks: {} },
  built: { ...plan.built, laid: {}, risen: {}, broken: {}, tapes: {}, levels: {} },
}))
