import { cited, derive, typed, type Derived } from '../basics/derived.ts'
import { CATALOGUE_MIXES } from '../plan/catalogue.ts'
import type { Plan } from '../plan/schema.ts'

/** Loose dry cement, kg per m³: the density that makes a 50 kg bag 0.03472 m³. */
const LOOSE_CEMENT = cited('mix.cement-loose', 'kg/m3', CATALOGUE_MIXES.cement.looseKgM3, CATALOGUE_MIXES.cement.source)
const BAG = cited('mix.bag', 'kg', CATALOGUE_MIXES.cement.bagKg, CATALOGUE_MIXES.cement.source)
const WATER = CATALOGUE_MIXES.waterLitrePerBag
const CONCRETE_WATER = cited('mix.concrete-water', 'l', WATER.concrete, WATER.source)
const MORTAR_WATER = cited('mix.mortar-water', 'l', WATER.mortar, WATER.source)
/** Water of a mortar bound with clay alone, m³ per m³ of loose dry parts. */
const CLAY_WATER = cited('mix.clay-water', 'm3/m3', 0.25, 'common-practice')
const LITRES = cited('mix.litres', 'l', 1000, 'si')
const CUBIC_METRE = cited('mix.cubic-metre', 'm3', 1, 'si')

/** The dry parts of a mix that go into a wet volume. */
interface MixAmounts {
  readonly cement: Derived<'kg'>
  readonly sand: Derived<'m3'>
  readonly water: Derived<'l'>
}

/**
 * Concrete by the dry-volume method.
 *
 *   dry = factor · wet      cement = dry · c ÷ (c + s + g) · 1440 kg/m³      sand, stone = dry · part ÷ (c + s + g)
 *
 * The parts are volumes of loose dry stuff; the factor stands for what the voids swallow.
 */
export function concreteAmounts(
  volume: Derived<'m3'>,
  mix: Plan['mixes']['concrete'],
): MixAmounts & { readonly stone: Derived<'m3'> } {
  const k = typed('mix.dry-factor', '1', mix.dryFactor, 'mixes.concrete.dryFactor')
  const dry = derive('mix.dry', 'm3', 'V · k', { V: volume, k }, (of) => of.V * of.k, { source: 'dry-volume' })
  const c = typed('mix.cement-part', '1', mix.cement, 'mixes.concrete.cement')
  const s = typed('mix.sand-part', '1', mix.sand, 'mixes.concrete.sand')
  const g = typed('mix.stone-part', '1', mix.stone, 'mixes.concrete.stone')
  const parts = derive('mix.parts', '1', 'c + s + g', { c, s, g }, (of) => of.c + of.s + of.g)
  const cement = cementIn(dry, c, parts)
  return {
    cement,
    sand: partOf('mix.sand', dry, s, parts),
    stone: partOf('mix.stone', dry, g, parts),
    water: waterByBag(cement, CONCRETE_WATER),
  }
}

/** Mortar by the same method, bound with cement, with clay or with both. */
export function mortarAmounts(
  volume: Derived<'m3'>,
  mix: Plan['mixes']['mortar'],
): MixAmounts & { readonly clay: Derived<'m3'> } {
  const k = typed('mix.dry-factor', '1', mix.dryFactor, 'mixes.mortar.dryFactor')
  const dry = derive('mix.dry', 'm3', 'V · k', { V: volume, k }, (of) => of.V * of.k, { source: 'dry-volume' })
  const c = typed('mix.cement-part', '1', mix.cement, 'mixes.mortar.cement')
  const y = typed('mix.clay-part', '1', mix.clay, 'mixes.mortar.clay')
  const s = typed('mix.sand-part', '1', mix.sand, 'mixes.mortar.sand')
  const parts = derive('mix.parts', '1', 'c + y + s', { c, y, s }, (of) => of.c + of.y + of.s)
  const cement = cementIn(dry, c, parts)
  return {
    cement,
    clay: partOf('mix.clay', dry, y, parts),
    sand: partOf('mix.sand', dry, s, parts),
    water: mix.cement > 0 ? waterByBag(cement, MORTAR_WATER) : waterByVolume(dry),
  }
}

const cementIn = (dry: Derived<'m3'>, c: Derived<'1'>, parts: Derived<'1'>): Derived<'kg'> =>
  derive(
    'mix.cement',
    'kg',
    'D · c / P · d',
    { D: dry, c, P: parts, d: LOOSE_CEMENT },
    (of) => ((of.D * of.c) / of.P) * of.d,
  )

const partOf = (id: string, dry: Derived<'m3'>, part: Derived<'1'>, parts: Derived<'1'>): Derived<'m3'> =>
  derive(id, 'm3', 'D · q / P', { D: dry, q: part, P: parts }, (of) => (of.D * of.q) / of.P)

const waterByBag = (cement: Derived<'kg'>, perBag: Derived<'l'>): Derived<'l'> =>
  derive('mix.water', 'l', 'C / B · l', { C: cement, B: BAG, l: perBag }, (of) => (of.C / of.B) * of.l)

const waterByVolume = (dry: Derived<'m3'>): Derived<'l'> =>
  derive(
    'mix.water',
    'l',
    'D · w / u · l',
    { D: dry, w: CLAY_WATER, u: CUBIC_METRE, l: LITRES },
    (of) => ((of.D * of.w) / of.u) * of.l,
  )
