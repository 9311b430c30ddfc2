import * as z from 'zod/mini'
import { layingSchema } from './laying.ts'
import { day, key, label, metres, minor, wholeWithin, within } from './fields.ts'
import { builtSchema } from './built-records.ts'
import { contributionSchema, memberSchema, payoutSchema, spendingSchema } from './money-records.ts'

/** The plan: everything the user decided and nothing that follows from it. Every change of shape raises PLAN_VERSION and adds a migration. */
export const PLAN_FORMAT = 'kilnwright-plan'
export const PLAN_VERSION = 2

const cell = z.strictObject({ fromM: metres(0.6), lengthM: metres(0.6), widthM: metres(0.6) })

export const wallUnitSchema = z.strictObject({
  key,
  family: z.enum(['hollow-block', 'solid-block', 'fired-brick', 'earth-block', 'clay-brick']),
  lengthM: within('walls.unit.lengthM'),
  widthM: within('walls.unit.widthM'),
  heightM: within('walls.unit.heightM'),
  voidFraction: within('walls.unit.voidFraction'),
  cells: z.array(cell).check(z.maxLength(6)),
  densityKgM3: within('walls.unit.densityKgM3'),
})

const jointSchema = z.strictObject({
  minM: within('walls.joint.minM'),
  usualM: within('walls.joint.usualM'),
  maxM: within('walls.joint.maxM'),
})

const part = within('mixes.part')

/** One way to buy an item. Lot size is in the item's own unit: kg of cement, m³ of sand, m of timber, pieces of units. */
export const offerSchema = z.strictObject({
  item: key,
  /** The make it is for, where the price hangs on it (a wall unit's key, a timber section); none where it fits any. */
  variant: z.exactOptional(label),
  lotSize: within('offer.lotSize'),
  lotName: z.enum(['piece', 'bag', 'load', 'length', 'roll', 'sheet', 'metre', 'kg', 'day', 'm3']),
  priceMinor: z.nullable(minor),
  seller: z.enum(['block-maker', 'hardware', 'timber', 'sand-stone', 'labour']),
  sellerName: label,
  place: label,
  seen: z.nullable(day),
  /** The seller's least order. */
  leastLots: wholeWithin('offer.leastLots'),
  /** Carriage of one trip, and how many lots a trip carries (by volume or mass, whichever fills it first); 0 where one trip takes all. */
  transportMinor: minor,
  tripLots: wholeWithin('offer.tripLots'),
  /** Width of a roll or a sheet, m; 0 where it has none. `lotSize` is then its length. */
  widthM: metres(10),
  chosen: z.boolean(),
})

/** Pieces of one size that the builder has already: boards, bars or sheets left from other work. */
const ownedSchema = z.strictObject({
  item: key,
  /** The make, as of an offer. */
  variant: z.exactOptional(label),
  lengthM: within('owned.lengthM'),
  /** Width of a sheet; 0 for boards and bars. */
  widthM: metres(3),
  count: wholeWithin('owned.count'),
})

/** One firing as it was; what was not weighed or paid stays null. */
export const firingSchema = z.strictObject({
  day,
  freshKg: within('firingLog.massKg'),
  productKg: z.nullable(within('firingLog.massKg')),
  woodKg: z.nullable(within('firingLog.massKg')),
  hours: z.nullable(within('firingLog.hours')),
  fishCostMinor: z.nullable(minor),
  woodCostMinor: z.nullable(minor),
  otherCostMinor: z.nullable(minor),
  salesMinor: z.nullable(minor),
  note: z.string().check(z.maxLength(500)),
})

/** One look at a part of the kiln, or work on it. `bad` counts what was found broken and wants replacing. */
export const upkeepSchema = z.strictObject({
  day,
  part: z.enum(['walls', 'lining', 'fill', 'trays', 'mesh', 'cover', 'hearth']),
  mended: z.boolean(),
  bad: z.int().check(z.gte(0), z.lte(1000)),
  costMinor: z.nullable(minor),
  note: z.string().check(z.maxLength(500)),
})

export const planSchema = z.strictObject({
  format: z.literal(PLAN_FORMAT),
  version: z.literal(PLAN_VERSION),
  id: key,
  name: z.string().check(z.minLength(1), z.maxLength(80)),
  example: z.boolean(),
  show: z.strictObject({ length: z.enum(['mm', 'cm', 'm', 'ft-in']), mass: z.enum(['kg', 'lb']) }),
  currency: z.strictObject({
    code: z.string().check(z.regex(/^[A-Z]{3}$/)),
    digits: z.int().check(z.gte(0), z.lte(3)),
  }),
  catch: z.strictObject({
    form: z.enum(['small-whole', 'large-cut', 'catfish', 'own']),
    /** Fish as landed on a usual day, kg; of the best season and the worst where they differ. */
    freshKgPerDay: within('catch.freshKgPerDay'),
    peakKgPerDay: z.nullable(within('catch.peakKgPerDay')),
    leanKgPerDay: z.nullable(within('catch.leanKgPerDay')),
    firingsPerDay: wholeWithin('catch.firingsPerDay'),
    loading: z.enum(['single-layer', 'packed']),
    loadKgPerM2: within('catch.loadKgPerM2'),
    loadKgPerTray: within('catch.loadKgPerTray'),
    dressingLoss: within('catch.dressingLoss'),
    moistureFresh: within('catch.moistureFresh'),
    moistureFinal: within('catch.moistureFinal'),
  }),
  chambers: z.strictObject({ count: wholeWithin('chambers.count'), clearSideM: within('chambers.clearSideM') }),
  walls: z.strictObject({
    unit: wallUnitSchema,
    /** Real units measured by the user: length, width, height of each, m. */
    samples: z.array(z.tuple([metres(0.7), metres(0.7), metres(0.7)])).check(z.maxLength(30)),
    leaf: z.enum(['single', 'one-brick']),
    bond: z.enum(['stretcher', 'english', 'header']),
    joint: jointSchema,
    aboveM: within('walls.aboveM'),
    belowM: within('walls.belowM'),
    /** The coursing taken from the choices, or null for the best of them. */
    coursing: z.nullable(
      z.strictObject({
        below: z.int().check(z.gte(0), z.lte(40)),
        above: z.int().check(z.gte(1), z.lte(60)),
        jointM: metres(0.04),
      }),
    ),
    /** Found by a longer search, or null for the quick one. */
    laying: z.nullable(layingSchema),
    fill: z.enum(['none', 'sand', 'clay']),
    cutLossM: within('walls.cutLossM'),
    liningM: within('walls.liningM'),
    renderM: within('walls.renderM'),
  }),
  openings: z.strictObject({
    widthM: within('openings.widthM'),
    heightM: within('openings.heightM'),
    head: z.enum(['lintel', 'steel', 'corbel', 'arch']),
    bearingM: within('openings.bearingM'),
  }),
  ground: z.strictObject({
    soil: key,
    footing: z.enum(['strip', 'pad']),
    projectionM: within('ground.projectionM'),
    thicknessM: within('ground.thicknessM'),
    /** Rise of the ground toward the right and toward the back, m per m; negative falls. */
    slopeAcross: within('ground.slopeAcross'),
    slopeBack: within('ground.slopeBack'),
    /** Bottom of the trench on sloping ground: one level, or steps of whole courses. */
    formation: z.enum(['level', 'stepped']),
    /** From one level line down to the ground at the front left peg, at one to its right and one behind it, and how far those stand from it; null: not read. */
    heights: z.strictObject({
      frontLeftM: z.nullable(within('ground.heightM')),
      rightM: z.nullable(within('ground.heightM')),
      rightApartM: z.nullable(within('ground.apartM')),
      backM: z.nullable(within('ground.heightM')),
      backApartM: z.nullable(within('ground.apartM')),
    }),
    /** What hands, thumb and picket said of the soil; null: not tried. */
    tests: z.strictObject({
      ground: z.nullable(z.enum(['natural', 'filled', 'peat', 'cracks-wide', 'mud', 'unsure'])),
      handful: z.nullable(z.enum(['falls-apart', 'stones', 'crumbles', 'sticky-ribbon', 'hard-red', 'rock', 'unsure'])),
      thumb: z.nullable(z.enum(['sinks-easily', 'moderate', 'hardly', 'unsure'])),
      picketM: z.nullable(within('ground.picketM')),
    }),
    /** Depth of standing water in a test hole and height of the highest flood mark, both from the ground at the front left peg. */
    waterTableM: z.nullable(within('ground.waterTableM')),
    floodM: z.nullable(within('ground.floodM')),
    rain: z.enum(['away', 'toward', 'unknown']),
    hardcoreM: within('ground.hardcoreM'),
    hearthM: within('ground.hearthM'),
    apronM: within('ground.apronM'),
    dampCourse: z.boolean(),
    panM3: within('ground.panM3'),
    barrowM3: within('ground.barrowM3'),
  }),
  trays: z.strictObject({
    perChamber: wholeWithin('trays.perChamber'),
    spares: wholeWithin('trays.spares'),
    railThicknessM: within('trays.railThicknessM'),
    railDepthM: within('trays.railDepthM'),
    setbackM: within('trays.setbackM'),
    handleM: within('trays.handleM'),
    gapM: within('trays.gapM'),
    corner: z.enum(['butt', 'lap', 'half-lap']),
    battens: wholeWithin('trays.battens'),
    meshLapM: within('trays.meshLapM'),
    /** Wire of the mesh and the distance from wire to wire, m. */
    meshWireM: within('trays.meshWireM'),
    meshPitchM: within('trays.meshPitchM'),
    cover: z.enum(['board', 'sheet', 'framed']),
    kerfM: within('trays.kerfM'),
    keepM: within('trays.keepM'),
    /** What is at hand to cut from, by an id of its own as offers are. */
    owned: z.record(key, ownedSchema),
  }),
  mixes: z.strictObject({
    concrete: z.strictObject({ cement: part, sand: part, stone: part, dryFactor: within('mixes.dryFactor') }),
    mortar: z.strictObject({ cement: part, clay: part, sand: part, dryFactor: within('mixes.dryFactor') }),
  }),
  waste: z.strictObject({
    units: within('waste.units'),
    concrete: within('waste.concrete'),
    mortar: within('waste.mortar'),
    fill: within('waste.fill'),
    timber: within('waste.timber'),
    mesh: within('waste.mesh'),
  }),
  place: z.strictObject({
    windDayDeg: z.nullable(within('place.windDeg')),
    windNightDeg: z.nullable(within('place.windDeg')),
    facing: z.enum(['into-wind', 'lee', 'own']),
    /** True bearing that the front looks to, where the user took his own. */
    frontDeg: z.nullable(within('place.windDeg')),
    /** Compass needle east of true north, where the place has it looked up. */
    declinationDeg: within('place.declinationDeg'),
    /** Distance from the kiln's nearest wall to the nearest of each, null where nobody has measured. */
    houseM: z.nullable(within('place.distanceM')),
    thatchM: z.nullable(within('place.distanceM')),
    boundaryM: z.nullable(within('place.distanceM')),
    fuelStoreM: z.nullable(within('place.distanceM')),
    treesM: z.nullable(within('place.distanceM')),
    /** True bearing from the kiln to the nearest house. */
    houseDeg: z.nullable(within('place.windDeg')),
    shelter: z.enum(['none', 'open-roof']),
    shelterHeadroomM: within('place.shelterHeadroomM'),
    shelterOverhangM: within('place.shelterOverhangM'),
  }),
  /** How a firing is run: its two stages, the air of the place and the wood. */
  firing: z.strictObject({
    cookHours: within('firing.cookHours'),
    dryHours: within('firing.dryHours'),
    cookDegC: within('firing.cookDegC'),
    dryDegC: within('firing.dryDegC'),
    airDegC: within('firing.airDegC'),
    airHumidity: within('firing.airHumidity'),
    woodMoisture: within('firing.woodMoisture'),
  }),
  /** Who builds, and on which days. */
  build: z.strictObject({
    startDay: z.nullable(day),
    masons: wholeWithin('build.masons'),
    labourers: wholeWithin('build.labourers'),
    carpenters: wholeWithin('build.carpenters'),
    hoursPerDay: within('build.hoursPerDay'),
    /** Days of the week without work, 0 = Sunday. */
    restWeekdays: z.array(z.int().check(z.gte(0), z.lte(6))).check(z.maxLength(6)),
    /** Share of days on which rain stops work outdoors. */
    rainShare: within('build.rainShare'),
    /** Days that were lost in truth. */
    lostDays: z.array(day).check(z.maxLength(200)),
    /** Steps that are done, by the id of the step: on which day and by whom. */
    ticks: z.record(key, z.strictObject({ day, who: label })),
  }),
  built: builtSchema,
  /** The kiln at work: prices per kilogram, lives, and the records of firings and upkeep by an id of their own. */
  run: z.strictObject({
    freshPriceMinor: z.nullable(minor),
    smokedPriceMinor: z.nullable(minor),
    woodPriceMinor: z.nullable(minor),
    /** Salt, water, baskets, labour, transport and cleaning of one firing together. */
    otherCostMinor: z.nullable(minor),
    firingDaysPerYear: wholeWithin('run.firingDaysPerYear'),
    kilnLifeYears: within('run.kilnLifeYears'),
    trayLifeYears: within('run.trayLifeYears'),
    firings: z.record(key, firingSchema),
    upkeep: z.record(key, upkeepSchema),
  }),
  /** Ways to buy, by an id of their own, so that two phones can add offers without clashing. */
  offers: z.record(key, offerSchema),
  /** Records of money and members, each by an id of its own for the same reason. */
  spending: z.record(key, spendingSchema),
  members: z.record(key, memberSchema),
  contributions: z.record(key, contributionSchema),
  payouts: z.record(key, payoutSchema),
  money: z.strictObject({ budgetMinor: z.nullable(minor), contingency: within('money.contingency') }),
})

export type Plan = z.infer<typeof planSchema>
export type WallUnit = z.infer<typeof wallUnitSchema>
export type Firing = z.infer<typeof firingSchema>
export type Upkeep = z.infer<typeof upkeepSchema>
export type Offer = z.infer<typeof offerSchema>
