import fc from 'fast-check'
import { LIMITS, type LimitedField } from '../../src/core/plan/limits.ts'
import type { Plan } from '../../src/core/plan/schema.ts'

/** A number of a field, on its step, inside a narrower range where one is named. */
export const field = (name: LimitedField, least = LIMITS[name].min, most = LIMITS[name].max) => {
  const { step } = LIMITS[name]
  const count = Math.floor((most - least) / step + 1e-9)
  return fc.integer({ min: 0, max: count }).map((n) => Math.round((least + n * step) * 1e6) / 1e6)
}

const maybe = <T>(some: fc.Arbitrary<T>): fc.Arbitrary<T | null> => fc.option(some, { nil: null })
const anyDay = fc.integer({ min: 1, max: 28 }).map((n) => `2026-02-${String(n).padStart(2, '0')}`)
const who = fc.constantFrom('', 'Mason')
const byId = <T>(name: string, some: fc.Arbitrary<T>, most: number): fc.Arbitrary<Record<string, T>> =>
  fc
    .array(some, { maxLength: most })
    .map((list) => Object.fromEntries(list.map((one, at) => [`${name}${String(at)}`, one])))
const anyMinor = maybe(fc.integer({ min: 0, max: 900_000 }))

const anyCatch: fc.Arbitrary<Partial<Plan['catch']>> = fc
  .record({
    form: fc.constantFrom<Plan['catch']['form']>('small-whole', 'large-cut', 'catfish', 'own'),
    peakKgPerDay: maybe(field('catch.peakKgPerDay', 1, 600)),
    leanKgPerDay: maybe(field('catch.leanKgPerDay', 0, 300)),
    firingsPerDay: field('catch.firingsPerDay'),
    loading: fc.constantFrom<Plan['catch']['loading']>('single-layer', 'packed'),
    loadKgPerM2: field('catch.loadKgPerM2'),
    loadKgPerTray: field('catch.loadKgPerTray'),
    dressingLoss: field('catch.dressingLoss'),
    moistureFresh: field('catch.moistureFresh', 0.5, 0.9),
    moistureFinal: field('catch.moistureFinal', 0.05, 0.49),
  })
  .filter(({ moistureFresh, moistureFinal }) => moistureFinal < moistureFresh)

const anyPlace: fc.Arbitrary<Plan['place']> = fc.record({
  windDayDeg: maybe(field('place.windDeg')),
  windNightDeg: maybe(field('place.windDeg')),
  facing: fc.constantFrom<Plan['place']['facing']>('into-wind', 'lee', 'own'),
  frontDeg: maybe(field('place.windDeg')),
  declinationDeg: field('place.declinationDeg'),
  houseM: maybe(field('place.distanceM', 0, 30)),
  thatchM: maybe(field('place.distanceM', 0, 30)),
  boundaryM: maybe(field('place.distanceM', 0, 30)),
  fuelStoreM: maybe(field('place.distanceM', 0, 30)),
  treesM: maybe(field('place.distanceM', 0, 30)),
  houseDeg: maybe(field('place.windDeg')),
  shelter: fc.constantFrom<Plan['place']['shelter']>('none', 'none', 'open-roof'),
  shelterHeadroomM: field('place.shelterHeadroomM'),
  shelterOverhangM: field('place.shelterOverhangM'),
})

type Tried<K extends keyof Plan['ground']['tests']> = NonNullable<Plan['ground']['tests'][K]>

const anyGround = fc.record({
  slope: fc.constantFrom([0, 0], [0, 0], [0.05, -0.03], [-0.12, 0.08]),
  formation: fc.constantFrom<Plan['ground']['formation']>('level', 'stepped'),
  waterTableM: maybe(field('ground.waterTableM', 0, 3)),
  floodM: maybe(field('ground.floodM', -1, 1)),
  rain: fc.constantFrom<Plan['ground']['rain']>('away', 'toward', 'unknown'),
  heights: fc.record({
    frontLeftM: maybe(field('ground.heightM')),
    rightM: maybe(field('ground.heightM')),
    rightApartM: maybe(field('ground.apartM')),
    backM: maybe(field('ground.heightM')),
    backApartM: maybe(field('ground.apartM')),
  }),
  tests: fc.record({
    ground: maybe(fc.constantFrom<Tried<'ground'>>('natural', 'filled', 'peat', 'cracks-wide', 'mud', 'unsure')),
    handful: maybe(fc.constantFrom<Tried<'handful'>>('falls-apart', 'stones', 'crumbles', 'hard-red', 'unsure')),
    thumb: maybe(fc.constantFrom<Tried<'thumb'>>('sinks-easily', 'moderate', 'hardly', 'unsure')),
    picketM: maybe(field('ground.picketM')),
  }),
  panM3: field('ground.panM3'),
  barrowM3: field('ground.barrowM3'),
})

const anyFiring: fc.Arbitrary<Plan['firing']> = fc.record({
  cookHours: field('firing.cookHours'),
  dryHours: field('firing.dryHours'),
  cookDegC: field('firing.cookDegC'),
  dryDegC: field('firing.dryDegC'),
  airDegC: field('firing.airDegC'),
  airHumidity: field('firing.airHumidity'),
  woodMoisture: field('firing.woodMoisture'),
})

const anyBuild: fc.Arbitrary<Plan['build']> = fc.record({
  startDay: maybe(anyDay),
  masons: field('build.masons', 0, 4),
  labourers: field('build.labourers', 0, 5),
  carpenters: field('build.carpenters', 0, 3),
  hoursPerDay: field('build.hoursPerDay', 3, 12),
  restWeekdays: fc.uniqueArray(fc.integer({ min: 0, max: 6 }), { maxLength: 3 }),
  rainShare: field('build.rainShare'),
  lostDays: fc.uniqueArray(anyDay, { maxLength: 4 }),
  ticks: fc
    .uniqueArray(fc.constantFrom('set-out', 'dig', 'footing', 'walls-1', 'trays', 'gone'), { maxLength: 4 })
    .chain((ids) =>
      fc.tuple(anyDay, who).map(([day, name]) => Object.fromEntries(ids.map((id) => [id, { day, who: name }]))),
    ),
})

/** Few of the plans were measured while built: their walls follow what was found. */
const anyBuilt: fc.Arbitrary<Partial<Plan['built']>> = fc.oneof(
  { weight: 4, arbitrary: fc.constant({}) },
  {
    weight: 1,
    arbitrary: fc.record({
      laid: fc
        .integer({ min: 0, max: 4 })
        .map((courses) =>
          Object.fromEntries(
            Array.from({ length: courses }, (_, at) => [`c${String(at)}`, { units: 9999, day: '2026-02-01', who: '' }]),
          ),
        ),
      risen: fc.constantFrom({}, { c1: { topM: 0.05, day: '2026-02-02', who: 'Mason' } }),
      broken: byId('b', fc.record({ units: fc.integer({ min: 0, max: 60 }), day: anyDay, who }), 3),
      tapes: fc.constantFrom({}, { 'A-B': 1.84, 'B-C': 1 }),
      levels: fc.constantFrom({}, { A: 1.2, B: 1.21, C: 1.2, D: 1.19, again: 1.2 }),
      batch: fc.record({
        measure: fc.constantFrom<Plan['built']['batch']['measure']>('pan', 'bucket', 'barrow'),
        bucketM3: field('built.bucketM3'),
        bags: fc.constantFrom<Plan['built']['batch']['bags']>(0.5, 1, 2),
        dampM: field('built.sandM', 0.1, 0.3),
        settledM: field('built.sandM', 0.1, 0.3),
      }),
    }),
  },
)

const anyRun: fc.Arbitrary<Plan['run']> = fc.record({
  freshPriceMinor: anyMinor,
  smokedPriceMinor: anyMinor,
  woodPriceMinor: anyMinor,
  otherCostMinor: anyMinor,
  firingDaysPerYear: field('run.firingDaysPerYear'),
  kilnLifeYears: field('run.kilnLifeYears'),
  trayLifeYears: field('run.trayLifeYears'),
  firings: byId(
    'f',
    fc.record({
      day: anyDay,
      freshKg: field('firingLog.massKg', 0, 300),
      productKg: maybe(field('firingLog.massKg', 0, 120)),
      woodKg: maybe(field('firingLog.massKg', 0, 400)),
      hours: maybe(field('firingLog.hours', 0, 30)),
      fishCostMinor: anyMinor,
      woodCostMinor: anyMinor,
      otherCostMinor: anyMinor,
      salesMinor: anyMinor,
      note: fc.constant(''),
    }),
    4,
  ),
  upkeep: byId(
    'u',
    fc.record({
      day: anyDay,
      part: fc.constantFrom<Plan['run']['upkeep'][string]['part']>('walls', 'lining', 'trays', 'mesh', 'cover'),
      mended: fc.boolean(),
      bad: fc.integer({ min: 0, max: 9 }),
      costMinor: anyMinor,
      note: fc.constant(''),
    }),
    3,
  ),
})

const anyMeasuring = fc.record({
  samples: fc.oneof(
    { weight: 4, arbitrary: fc.constant<number[]>([]) },
    { weight: 1, arbitrary: fc.array(fc.integer({ min: -4, max: 4 }), { minLength: 3, maxLength: 6 }) },
  ),
  cutLossM: field('walls.cutLossM', 0, 0.008),
  bearingM: field('openings.bearingM', 0.1, 0.3),
  length: fc.constantFrom<Plan['show']['length']>('mm', 'cm', 'm', 'ft-in'),
  mass: fc.constantFrom<Plan['show']['mass']>('kg', 'lb'),
  brick: fc.constantFrom<Plan['walls']['bond']>('stretcher', 'english', 'header'),
  concrete: fc.constantFrom(
    { cement: 1, sand: 2, stone: 4, dryFactor: 1.54 },
    { cement: 1, sand: 3, stone: 6, dryFactor: 1.57 },
  ),
})

const anyOwned: fc.Arbitrary<Plan['trays']['owned'][string]> = fc.record({
  item: fc.constantFrom('rail', 'cover-sheet', 'something-else'),
  lengthM: field('owned.lengthM', 0.3, 4),
  widthM: fc.constantFrom(0, 0.6, 1.22),
  count: field('owned.count', 1, 20),
})

const anyTrayRest = fc.record({
  owned: byId('own', anyOwned, 3),
  railDepthM: field('trays.railDepthM', 0.03, 0.1),
  handleM: field('trays.handleM', 0, 0.2),
  gapM: field('trays.gapM', 0, 0.06),
  meshLapM: field('trays.meshLapM'),
  meshWireM: field('trays.meshWireM', 0.0005, 0.003),
  meshPitchM: field('trays.meshPitchM', 0.006, 0.05),
  kerfM: field('trays.kerfM', 0, 0.006),
  keepM: field('trays.keepM', 0, 1),
})

const anyWaste = fc.record({
  concrete: field('waste.concrete', 0, 0.3),
  mortar: field('waste.mortar', 0, 0.3),
  fill: field('waste.fill', 0, 0.3),
})

/** The parts of a plan that its walls, trays and money do not choose themselves, each as a change to a plan. */
export const restOfPlan: fc.Arbitrary<(plan: Plan) => Plan> = fc
  .record({
    fish: anyCatch,
    place: anyPlace,
    ground: anyGround,
    firing: anyFiring,
    build: anyBuild,
    built: anyBuilt,
    run: anyRun,
    measuring: anyMeasuring,
    trays: anyTrayRest,
    waste: anyWaste,
  })
  .map(({ fish, place, ground: { slope, ...ground }, measuring, ...of }) => (plan: Plan): Plan => {
    const { unit } = plan.walls
    const isBrick = Math.abs(unit.lengthM - 2 * unit.widthM) < 0.02 && unit.cells.length === 0
    const leaf = isBrick && measuring.brick !== 'stretcher' ? 'one-brick' : 'single'
    return {
      ...plan,
      show: { length: measuring.length, mass: measuring.mass },
      catch: { ...plan.catch, ...fish },
      place,
      ground: { ...plan.ground, ...ground, slopeAcross: slope[0], slopeBack: slope[1] },
      firing: of.firing,
      build: of.build,
      built: { ...plan.built, ...of.built },
      run: of.run,
      walls: {
        ...plan.walls,
        leaf,
        bond: leaf === 'single' ? 'stretcher' : measuring.brick,
        cutLossM: measuring.cutLossM,
        samples: measuring.samples.map((mm): [number, number, number] => [
          unit.lengthM + mm / 1000,
          unit.widthM,
          unit.heightM,
        ]),
      },
      openings: { ...plan.openings, bearingM: measuring.bearingM },
      mixes: { ...plan.mixes, concrete: measuring.concrete },
      trays: { ...plan.trays, ...of.trays },
      waste: { ...plan.waste, ...of.waste },
    }
  })
