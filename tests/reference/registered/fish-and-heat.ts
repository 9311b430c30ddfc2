import { cited, type Derived } from '../../../src/core/basics/derived.ts'
import { productAt, yieldFrom } from '../../../src/core/fish/drying.ts'
import { conduct } from '../../../src/core/heat/conduct.ts'
import { draughtOf } from '../../../src/core/heat/draught.ts'
import { efficiencyOf, heatOfWood } from '../../../src/core/heat/fuel.ts'
import { boilOffHeat, fishSpecificHeat, latentHeat } from '../../../src/core/heat/heat-needs.ts'
import { layersResistance, transmittance, type SlabLayer } from '../../../src/core/heat/slab.ts'
import { firingAccount } from '../../../src/core/schedule/firing-account.ts'
import { firingLog } from '../../../src/core/schedule/firing-log.ts'
import { plainPlan } from '../../core/fish/plans.ts'
import type { Worked } from './worked.ts'

const share = (value: number) => cited('test', '1', value, 'memory')
const kg = (value: number): Derived<'kg'> => cited('test', 'kg', value, 'memory')
const degC = (value: number): Derived<'degC'> => cited('test', 'degC', value, 'memory')

interface Published {
  readonly fresh: number
  readonly wood: number
  readonly smoked: number
  readonly smokedMinor: number
  readonly otherMinor: number
}
// Other costs in cents: salt at 0.2 a kg, water, baskets and labour at 1, 1 and 2 each, transport, cleaning.
const KILN = { fresh: 300, wood: 100, smoked: 105, smokedMinor: 350, otherMinor: 200 + 200 + 300 + 600 + 1500 + 100 }
const GRILL = { fresh: 150, wood: 150, smoked: 60, smokedMinor: 300, otherMinor: 100 + 100 + 200 + 400 + 700 + 50 }

function account({ fresh, wood, smoked, smokedMinor, otherMinor }: Published) {
  const plan = plainPlan()
  const prices = { freshPriceMinor: 60, woodPriceMinor: 7, smokedPriceMinor: smokedMinor, otherCostMinor: otherMinor }
  const run = { ...plan.run, ...prices }
  return firingAccount({ ...plan, run }, { fresh: kg(fresh), wood: kg(wood), product: kg(smoked) })
}
/** The block kiln's firing as its owner would have written it down. */
function logged() {
  const plan = plainPlan()
  const unasked = { hours: null, fishCostMinor: null, woodCostMinor: null, otherCostMinor: null, salesMinor: null }
  const firing = {
    day: '2026-03-01',
    freshKg: KILN.fresh,
    productKg: KILN.smoked,
    woodKg: KILN.wood,
    note: '',
    ...unasked,
  }
  return firingLog({ ...plan, run: { ...plan.run, firings: { one: firing } } }).firings[0]
}

const inUnits = (money: Derived<'money'> | undefined): number | undefined => money && money.value / 100

const efficiency = ({ fresh, smoked, wood }: Published): number =>
  efficiencyOf(boilOffHeat(kg(fresh - smoked), degC(25)), kg(wood), heatOfWood(share(0.2))).value

const brick = (thicknessM: number): SlabLayer => ({
  thicknessM,
  conductivityWmK: 0.84,
  densityKgM3: 1700,
  heatJkgK: 800,
})

/** Share of a sudden rise at the face that a thick wall has felt where x = √(α t), read between the two cells there. */
function feltAtDiffusionDepth(): number {
  const layer: SlabLayer = { thicknessM: 1.2, conductivityWmK: 1.2, densityKgM3: 1800, heatJkgK: 1000 }
  const wall = { layers: [layer], outsideFilmWm2K: 0 }
  const run = conduct(wall, [{ hours: 4, gasDegC: 120, insideFilmWm2K: 1e9 }], { airDegC: 20, start: 20 })
  const cellM = 1.2 / run.temperatures.length
  const at = Math.sqrt((1.2 / (1800 * 1000)) * 4 * 3600) / cellM - 0.5
  const before = Math.floor(at)
  const [a = Number.NaN, b = Number.NaN] = run.temperatures.slice(before, before + 2)
  return (a + (at - before) * (b - a) - 20) / 100
}

export const FISH_AND_HEAT: Worked = {
  'yield-soft': () => yieldFrom(share(0.75), share(0.25)).value,
  'yield-hard': () => yieldFrom(share(0.75), share(0.1)).value,
  'account-cost': () => inUnits(account(KILN)?.cost),
  'account-sales': () => inUnits(account(KILN)?.sales),
  'account-net': () => inUnits(account(KILN)?.net),
  'account-grill-net': () => inUnits(account(GRILL)?.net),
  'wood-per-fresh': () => logged()?.woodPerFresh?.value,
  'wood-per-smoked': () => logged()?.woodPerProduct?.value,
  'keeps-hard': () => productAt(0.12).keepsDays?.from,
  'wood-20': () => heatOfWood(share(0.2)).value,
  'wood-40': () => heatOfWood(share(0.4)).value,
  'wood-60': () => heatOfWood(share(0.6)).value,
  'fish-heat': () => fishSpecificHeat(share(0.7)).value,
  'latent-100': () => latentHeat(100).value,
  'efficiency-kiln': () => efficiency(KILN),
  'efficiency-grill': () => efficiency(GRILL),
  'u-value': () => {
    const plaster: SlabLayer = { thicknessM: 0.013, conductivityWmK: 0.5, densityKgM3: 1300, heatJkgK: 1000 }
    return transmittance({ layers: [plaster, brick(0.215)], outsideFilmWm2K: 1 / 0.055 }, 1 / 0.123)
  },
  'r-half-brick': () => layersResistance({ layers: [brick(0.102)], outsideFilmWm2K: 1 }),
  draught: () => draughtOf(cited('test', 'm', 3, 'memory'), degC(30), degC(80)).value,
  erfc: feltAtDiffusionDepth,
}
