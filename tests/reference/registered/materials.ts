import { cited, counted } from '../../../src/core/basics/derived.ts'
import { lotsFor } from '../../../src/core/basics/count.ts'
import { cutLengths } from '../../../src/core/cutting/cut-lengths.ts'
import { richestSheet } from '../../../src/core/cutting/guillotine-limited.ts'
import { nailsPerKg } from '../../../src/core/fish/tray-fixings.ts'
import { trayFrame } from '../../../src/core/fish/tray-frame.ts'
import { CATALOGUE_MIXES, CATALOGUE_UNITS, soilOf } from '../../../src/core/plan/catalogue.ts'
import type { Plan } from '../../../src/core/plan/schema.ts'
import { batchBox } from '../../../src/core/quantities/batch-box.ts'
import { beddedAreaM2 } from '../../../src/core/quantities/hollow-beds.ts'
import { concreteAmounts, mortarAmounts } from '../../../src/core/quantities/mix.ts'
import { rate, waitDays } from '../../../src/core/schedule/labour-data.ts'
import { plainPlan } from '../../core/fish/plans.ts'
import checks from '../data/cutting-checks.json' with { type: 'json' }
import type { Worked } from './worked.ts'

const cubicMetre = (value = 1) => counted('test', 'm3', value)
const concrete = (sand: number, stone: number, dryFactor: number) =>
  concreteAmounts(cubicMetre(), { cement: 1, sand, stone, dryFactor })
const mortar = (sand: number, volumeM3 = 1) =>
  mortarAmounts(cubicMetre(volumeM3), { cement: 1, clay: 0, sand, dryFactor: 1.33 })

const unit = (key: string) => {
  const found = CATALOGUE_UNITS.find((one) => one.key === key)
  if (found === undefined) throw new Error(key)
  return found
}

/** Bricks of 190 × 90 × 90 mm in a cubic metre of wall, and the mortar between them. */
function brickwork() {
  const { lengthM, widthM, heightM, joint } = unit('brick-190-90-90')
  const j = joint.usualM
  const bricks = 1 / ((lengthM + j) * (widthM + j) * (heightM + j))
  return { bricks, mortarM3: 1 - bricks * lengthM * widthM * heightM }
}

/** Mortar of ten nine-inch hollow blocks to the square metre at 25 mm joints, m³/m². */
function blockMortarM(): number {
  const block = unit('hollow-450-225-225')
  return 10 * (beddedAreaM2(block) + block.widthM * block.heightM) * 0.025
}

const traysOf = (clearSideM: number, widthM: number, trays: Partial<Plan['trays']>): Plan => {
  const plan = plainPlan()
  return {
    ...plan,
    chambers: { count: 1, clearSideM },
    walls: { ...plan.walls, unit: { ...plan.walls.unit, widthM } },
    trays: { ...plan.trays, ...trays },
  }
}
const usualTray = () => trayFrame(traysOf(0.68, 0.16, { railThicknessM: 0.02, setbackM: 0.03, handleM: 0.12 }))

/** A frame of 0.92 m in 50 × 50 mm timber with a kilogram of mesh and 18 kg of fish. */
function loadedTray(): number {
  const wireM = 0.001
  const meshPitchM = 2 * 0.92 ** 2 * ((Math.PI * wireM ** 2) / 4) * 7850
  const plan = traysOf(0.76, 0.225, {
    railThicknessM: 0.05,
    railDepthM: 0.05,
    setbackM: 0.03,
    handleM: 0,
    battens: 0,
    meshLapM: 0.05,
    meshWireM: wireM,
    meshPitchM,
  })
  return trayFrame({ ...plan, catch: { ...plan.catch, loading: 'packed', loadKgPerTray: 18 } }).mass.loaded.value
}

function meshOfSeven(): number {
  const frame = trayFrame(traysOf(1.14, 0.225, { setbackM: 0.03, meshLapM: 0.02, perChamber: 7, spares: 0 }))
  return frame.mesh.value * frame.count.value
}

function sheetValue(id: string): number | undefined {
  const sheet = checks.two_d_guillotine.find((one) => one.id === id)
  if (sheet === undefined) return undefined
  const items = sheet.items.map((one) => ({
    length: one.l,
    width: one.w,
    value: one.value,
    ...('max' in one ? { most: one.max } : {}),
  }))
  return richestSheet(sheet.L, sheet.W, items, 5_000_000)?.value
}

export const MATERIALS: Worked = {
  'concrete-cement': () => concrete(2, 4, 1.54).cement.value,
  'concrete-sand': () => concrete(2, 4, 1.54).sand.value,
  'concrete-stone': () => concrete(2, 4, 1.54).stone.value,
  'schedule-124': () => concrete(2, 4, 1.57).cement.value,
  'schedule-136': () => concrete(3, 6, 1.57).cement.value,
  'schedule-148': () => concrete(4, 8, 1.57).cement.value,
  sacks: () => lotsFor(70.1 * 7.05, 1),
  'bag-volume': () => CATALOGUE_MIXES.cement.bagKg / CATALOGUE_MIXES.cement.looseKgM3,
  'mortar-14': () => mortar(4).cement.value,
  'mortar-16': () => mortar(6).cement.value,
  'brickwork-bricks': () => brickwork().bricks,
  'brickwork-mortar': () => brickwork().mortarM3,
  'brickwork-cement': () => mortar(5, brickwork().mortarM3).cement.value,
  'block-bed': () => beddedAreaM2(unit('hollow-450-225-225')),
  'block-mortar': blockMortarM,
  bulking: () => {
    const plan = plainPlan()
    const batch = { ...plan.built.batch, dampM: 0.2, settledM: 0.16 }
    return batchBox({ ...plan, built: { ...plan.built, batch } }, 'concrete').bulking.value
  },
  'tamped-sand': () => CATALOGUE_MIXES.fill.find(({ key }) => key === 'sand')?.compaction,
  'tray-frame': () => usualTray().side.value,
  'tray-bearing': () => usualTray().bearing.value,
  'tray-handle': () => usualTray().throughRail.value,
  'tray-loaded': loadedTray,
  'tray-mesh': meshOfSeven,
  nails: () =>
    nailsPerKg(cited('nail-diameter', 'm', 0.00125, 'is-723'), cited('nail-length', 'm', 0.02, 'is-723')).value,
  'kerf-four': () =>
    cutLengths({
      pieces: [{ lengthM: 0.6, count: 4 }],
      stock: [{ key: 'bar', lengthM: 2.4, priceMinor: 1 }],
      kerfM: 0.003,
      keepM: 0.3,
    }).cost,
  'sheet-gcut1': () => sheetValue('gcut1'),
  'block-hours': () => rate('block-mason', 'h/m2').value * 448 * 0.3048 ** 2,
  'trench-sand': () => soilOf('sand-dense').digHoursPerM3,
  'brick-mason': () => rate('brick-mason', 'h/m3').value,
  curing: () => waitDays('curing').value,
}
