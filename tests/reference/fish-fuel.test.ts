import { describe, expect, it } from 'vitest'
import { cited, type Derived } from '../../src/core/basics/derived.ts'
import { efficiencyOf, fuel, heatOfWood } from '../../src/core/heat/fuel.ts'
import { boilOffHeat, fishSpecificHeat, latentHeat } from '../../src/core/heat/heat-needs.ts'
import { draughtOf } from '../../src/core/heat/draught.ts'
import { dryingAir, humidityRatio, saturationPa } from '../../src/core/heat/humid-air.ts'
import { drying } from '../../src/core/fish/drying.ts'
import { plainPlan } from '../core/fish/plans.ts'

const share = (value: number) => cited('test', '1', value, 'memory')
const kg = (value: number): Derived<'kg'> => cited('test', 'kg', value, 'memory')
const degC = (value: number): Derived<'degC'> => cited('test', 'degC', value, 'memory')

describe('heat of wood', () => {
  // FAO wood-fuel tables: net calorific value 19 − 0.214 · M MJ/kg: 20 % 14.72, 40 % 10.44, 60 % 6.16.
  it.each([
    [0.2, 14.72],
    [0.4, 10.44],
    [0.6, 6.16],
  ])('at moisture %d is %d MJ/kg', (moisture, megajoules) => {
    expect(heatOfWood(share(moisture)).value / 1e6).toBeCloseTo(megajoules, 9)
  })
})

describe('fish', () => {
  // Earle, Unit operations in food processing, appendix 7: c = 4.19 p / 100 + 0.84 (100 − p) / 100 kJ/kgK, p = 70 → 3.185.
  it('of 70 % moisture has a specific heat of 3.185 kJ/kgK', () => {
    expect(fishSpecificHeat(share(0.7)).value).toBeCloseTo(3185, 6)
  })
})

describe('water', () => {
  // Steam tables: latent heat 2256.5 kJ/kg at 100 °C, 2357.7 at 60 °C, 2429.8 at 30 °C; the line through them is within 0.5 %.
  it.each([
    [100, 2256.5],
    [60, 2357.7],
    [30, 2429.8],
  ])('at %d °C takes %d kJ/kg to evaporate', (at, kilojoules) => {
    expect(Math.abs(latentHeat(at).value / 1000 / kilojoules - 1)).toBeLessThan(0.005)
  })
  // Steam tables: saturation pressure 4247 Pa at 30 °C, 19 947 Pa at 60 °C; the Magnus form is within 1 %.
  it.each([
    [30, 4247],
    [60, 19_947],
  ])('at %d °C has a vapour pressure of %d Pa', (at, pascals) => {
    expect(Math.abs(saturationPa(at) / pascals - 1)).toBeLessThan(0.01)
  })
})

describe('efficiency of the kilns in the accounts of one firing', () => {
  // FAO Fisheries and Aquaculture Technical Paper 535, table 9: 300 kg fresh to 105 kg smoked with 100 kg of wood; 150 kg to 60 kg with 150 kg on an open grill.
  // Worked by hand with wood of 20 % moisture and water from 25 °C boiled off at 100 °C: 34.1 % and 10.5 %.
  const of = (freshKg: number, smokedKg: number, woodKg: number) =>
    efficiencyOf(boilOffHeat(kg(freshKg - smokedKg), degC(25)), kg(woodKg), heatOfWood(share(0.2))).value
  it('is 34.1 % for the block kiln', () => expect(Math.abs(of(300, 105, 100) - 0.341)).toBeLessThan(0.002))
  it('is 10.5 % for the open grill', () => expect(Math.abs(of(150, 60, 150) - 0.105)).toBeLessThan(0.002))
})

describe('wood by two routes', () => {
  it('is a third to one kilogram per kilogram of fresh fish in the same table', () => {
    const found = fuel(plainPlan(), drying(plainPlan(), kg(300)))
    expect(found.byRatio.low.value).toBeCloseTo(100, 9)
    expect(found.byRatio.high.value).toBeCloseTo(300, 9)
  })
  it('agrees: the energy balance of 300 kg brackets the 100 kg that the block kiln burnt', () => {
    // Same table; yield 0.35 of fresh: 75 % moisture to 28.6 %.
    const plan = plainPlan()
    const smoked = {
      ...plan,
      chambers: { count: 4, clearSideM: 0.8 },
      catch: { ...plan.catch, moistureFinal: 1 - 0.25 / 0.35 },
      firing: { ...plan.firing, dryHours: 6 },
    }
    const found = fuel(smoked, drying(smoked, kg(300)))
    expect(found.byEnergy.low.wood.value).toBeLessThan(100)
    expect(found.byEnergy.high.wood.value).toBeGreaterThan(100)
    expect(found.byEnergy.low.efficiency.value).toBeGreaterThan(0.341)
    expect(found.byEnergy.high.efficiency.value).toBeLessThan(0.341)
  })
})

describe('draught', () => {
  // Chimney texts: 353 · g · h · (1 / To − 1 / Ti); 3 m, 303.15 K outside and 353.15 K inside → 4.85 Pa.
  it('of 3 m between 30 and 80 °C is 4.85 Pa', () => {
    const found = draughtOf(cited('test', 'm', 3, 'memory'), degC(30), degC(80))
    expect(found.value).toBeCloseTo(4.85, 2)
  })
})

describe('drying air', () => {
  // By hand from steam tables (4247 Pa at 30 °C, 5034 Pa at 33 °C, 4755 Pa at 32 °C): 20.1 g/kg in; enthalpies meet between 32 and 33 °C, near 32.7.
  it('soaks itself full where the enthalpies meet', () => {
    const air = dryingAir(30, 0.75, 60)
    expect(Math.abs(1000 * air.ratioIn - 20.1)).toBeLessThan(0.3)
    expect(Math.abs(air.wetBulbDegC - 32.7)).toBeLessThan(0.3)
    expect(humidityRatio(saturationPa(air.wetBulbDegC)) - air.ratioIn).toBeCloseTo(air.mostPickUp, 12)
  })
})
