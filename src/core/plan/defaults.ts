import { modulesToCover, toStep } from '../basics/count.ts'
import { asWallUnit, CATALOGUE_FORMS, CATALOGUE_MIXES, CATALOGUE_UNITS, type CatalogueUnit } from './catalogue.ts'
import { PLAN_FORMAT, PLAN_VERSION, type Plan } from './schema.ts'

/** The three answers a new plan begins with. */
export interface FirstAnswers {
  readonly id: string
  readonly name: string
  readonly freshKgPerDay: number
  readonly unitKey: string
  readonly soil: string
  readonly currency: { readonly code: string; readonly digits: number }
}

const named = <T extends { readonly key: string }>(list: readonly T[], key: string): T => {
  const found = list.find((one) => one.key === key)
  if (found === undefined) throw new Error(`not in the catalogue: ${key}`)
  return found
}

/** Everything of `walls` that follows from a catalogue unit: choosing another unit sets these together. */
export const wallsFor = (
  unit: CatalogueUnit,
): Pick<Plan['walls'], 'unit' | 'joint' | 'fill' | 'samples' | 'coursing' | 'laying'> => ({
  unit: asWallUnit(unit),
  joint: unit.joint,
  samples: [],
  coursing: null,
  laying: null,
  fill: unit.cells.length > 0 ? 'sand' : 'none',
})

/** Mortar waste goes by the kind of unit: bricks lose more than blocks. */
export const mortarWasteFor = (unit: Pick<CatalogueUnit, 'family'>): number =>
  unit.family === 'fired-brick' || unit.family === 'clay-brick'
    ? CATALOGUE_MIXES.waste.brickMortar
    : CATALOGUE_MIXES.waste.blockMortar

/** Common practice: a chamber of 0.68 m clear with an opening 0.35 m wide and high. */
const CLEAR_SIDE_M = 0.68
const OPENING_M = 0.35
const OPENING_STEP_M = 0.01

/**
 * An opening as wide as common practice has it, or as much wider as leaves a pillar between two openings that bonds in a single
 * leaf: where the perpends of the dividing wall, (t + j) ÷ 2 from the middle, leave no quarter lap for one between them, one unit
 * must span the pillar.
 */
function openingWidthFor({ lengthM, widthM, joint }: CatalogueUnit): number {
  const bondsInMiddle = lengthM / 4 <= (widthM + joint.usualM) / 2
  if (bondsInMiddle) return OPENING_M
  const leastM = CLEAR_SIDE_M + widthM - lengthM
  return Math.max(OPENING_M, toStep(modulesToCover(leastM, OPENING_STEP_M) * OPENING_STEP_M, 1e-3))
}

/** A whole plan from three answers: common practice for the rest, and enough chambers for the catch is chosen by `fish`. */
export function newPlan(first: FirstAnswers): Plan {
  const unit = named(CATALOGUE_UNITS, first.unitKey)
  const { key: _concrete, source: _one, ...concrete } = named(CATALOGUE_MIXES.concrete, '1-2-4')
  const earthen = unit.family === 'earth-block' || unit.family === 'clay-brick'
  const { key: _mortar, source: _two, ...mortar } = named(CATALOGUE_MIXES.mortar, earthen ? 'clay-1-2' : '1-5')
  const fish = named(CATALOGUE_FORMS, 'small-whole')
  return {
    format: PLAN_FORMAT,
    version: PLAN_VERSION,
    id: first.id,
    name: first.name,
    example: false,
    show: { length: 'mm', mass: 'kg' },
    currency: first.currency,
    catch: {
      form: fish.key,
      freshKgPerDay: first.freshKgPerDay,
      peakKgPerDay: null,
      leanKgPerDay: null,
      firingsPerDay: 1,
      loading: 'single-layer',
      loadKgPerM2: fish.loadKgPerM2,
      loadKgPerTray: fish.loadKgPerTray,
      dressingLoss: fish.dressingLoss,
      moistureFresh: fish.moisture,
      moistureFinal: 0.1,
    },
    chambers: { count: 2, clearSideM: CLEAR_SIDE_M },
    walls: {
      ...wallsFor(unit),
      leaf: 'single',
      bond: 'stretcher',
      aboveM: 0.6,
      belowM: 0.2,
      cutLossM: 0.005,
      liningM: 0,
      renderM: 0,
    },
    openings: { widthM: openingWidthFor(unit), heightM: OPENING_M, head: 'lintel', bearingM: 0.15 },
    ground: {
      soil: first.soil,
      footing: 'strip',
      projectionM: 0.1,
      thicknessM: 0.1,
      slopeAcross: 0,
      slopeBack: 0,
      formation: 'level',
      heights: { frontLeftM: null, rightM: null, rightApartM: null, backM: null, backApartM: null },
      tests: { ground: null, handful: null, thumb: null, picketM: null },
      waterTableM: null,
      floodM: null,
      rain: 'unknown',
      hardcoreM: 0,
      hearthM: 0,
      apronM: 0,
      dampCourse: false,
      panM3: 0.02,
      barrowM3: 0.06,
    },
    trays: {
      perChamber: 8,
      spares: 0,
      railThicknessM: 0.02,
      railDepthM: 0.06,
      setbackM: 0.03,
      handleM: 0.12,
      gapM: 0.01,
      corner: 'butt',
      battens: 1,
      meshLapM: 0.02,
      meshWireM: 0.0012,
      meshPitchM: 0.0125,
      cover: 'sheet',
      kerfM: 0.003,
      keepM: 0.3,
      owned: {},
    },
    mixes: { concrete, mortar },
    waste: {
      units: CATALOGUE_MIXES.waste.units,
      concrete: CATALOGUE_MIXES.waste.concrete,
      mortar: mortarWasteFor(unit),
      fill: 0.1,
      timber: 0,
      mesh: 0,
    },
    place: {
      windDayDeg: null,
      windNightDeg: null,
      facing: 'into-wind',
      frontDeg: null,
      declinationDeg: 0,
      houseM: null,
      thatchM: null,
      boundaryM: null,
      fuelStoreM: null,
      treesM: null,
      houseDeg: null,
      shelter: 'none',
      shelterHeadroomM: 2.2,
      shelterOverhangM: 0.9,
    },
    firing: {
      cookHours: 2,
      dryHours: 10,
      cookDegC: 90,
      dryDegC: 60,
      airDegC: 30,
      airHumidity: 0.75,
      woodMoisture: 0.2,
    },
    build: {
      startDay: null,
      masons: 1,
      labourers: 2,
      carpenters: 1,
      hoursPerDay: 8,
      restWeekdays: [0],
      rainShare: 0,
      lostDays: [],
      ticks: {},
    },
    built: {
      laid: {},
      risen: {},
      broken: {},
      tapes: {},
      levels: {},
      batch: { measure: 'pan', bucketM3: 0.01, bags: 1, dampM: 0.2, settledM: 0.2 },
    },
    run: {
      freshPriceMinor: null,
      smokedPriceMinor: null,
      woodPriceMinor: null,
      otherCostMinor: null,
      firingDaysPerYear: 200,
      kilnLifeYears: earthen ? 3 : 10,
      trayLifeYears: 2,
      firings: {},
      upkeep: {},
    },
    offers: {},
    spending: {},
    members: {},
    contributions: {},
    payouts: {},
    money: { budgetMinor: null, contingency: 0.05 },
  }
}
