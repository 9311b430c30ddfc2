import { newPlan, wallsFor } from '../../src/core/plan/defaults.ts'
import { CATALOGUE_UNITS } from '../../src/core/plan/catalogue.ts'
import type { Offer, Plan } from '../../src/core/plan/schema.ts'
import { examplePlan, offered } from '../core/costs/plans.ts'

const base: Plan = { ...examplePlan('two-chambers'), offers: {} }
const offer = (item: string, lotSize: number, more: Partial<Offer> = {}): Offer =>
  offered(item, lotSize, 100, { lotName: 'piece', seller: 'timber', ...more })
const selling = (offers: Plan['offers'], trays: Partial<Plan['trays']> = {}): Plan => ({
  ...base,
  trays: { ...base.trays, ...trays },
  offers,
})
const trip = { transportMinor: 40, tripLots: 3 }
const roll = { lotName: 'roll', seller: 'hardware', widthM: 0.9 } as const
const sheet = { lotName: 'sheet', widthM: 1.22 } as const
const owned = (item: string, lengthM: number, widthM: number, count: number) => ({ item, lengthM, widthM, count })

/** Walls of a catalogue unit that is laid a brick thick. */
function brickWalls(key: string, bond: Plan['walls']['bond']): Plan['walls'] {
  const unit = CATALOGUE_UNITS.find((one) => one.key === key)
  if (unit === undefined) throw new Error(key)
  return { ...base.walls, ...wallsFor(unit), leaf: 'one-brick', bond }
}

const clayKiln = newPlan({
  id: 'clay',
  name: 'Of clay',
  freshKgPerDay: 90,
  unitKey: 'adobe-290-140-110',
  soil: 'clay-soft',
  currency: { code: 'XTS', digits: 2 },
})
const onSlope: Plan['ground'] = {
  ...base.ground,
  slopeAcross: 0.12,
  slopeBack: -0.08,
  hardcoreM: 0.1,
  hearthM: 0.05,
  apronM: 0.5,
  dampCourse: true,
  floodM: 0.2,
  waterTableM: 0.2,
  rain: 'toward',
}

/** Plans that reach what random ones seldom do, each with the findings that show that it does. */
export const rarePlans: readonly (readonly [name: string, plan: Plan, findings: readonly string[]])[] = [
  ['rails longer than all that is sold', selling({ a: offer('rail', 1.1) }), ['buy.piece-too-long']],
  ['rails shorter than any handle', selling({ a: offer('rail', 0.7) }), ['buy.piece-too-long']],
  [
    'boards shorter than the cover',
    selling({ a: offer('cover-board', 0.7, { widthM: 0.15 }) }, { cover: 'board' }),
    ['buy.piece-too-long'],
  ],
  [
    'rolls and sheets without a width',
    selling({ a: offer('mesh', 25, { lotName: 'roll' }), b: offer('cover-sheet', 2.44), c: offer('cover-sheet', 2) }),
    ['buy.width-missing'],
  ],
  ['rolls shorter than a square', selling({ a: offer('mesh', 0.6, roll) }), ['buy.roll-too-short']],
  [
    'covers larger than a sheet',
    selling({ a: offer('cover-sheet', 0.6, { ...sheet, widthM: 0.5 }) }),
    ['cover-joined'],
  ],
  [
    'framed covers larger than a sheet',
    selling({ a: offer('cover-sheet', 0.6, { ...sheet, widthM: 0.5 }) }, { cover: 'framed' }),
    ['cover-joined'],
  ],
  [
    'several sellers, trips and least orders',
    selling(
      {
        blocks: offer('wall-unit', 1, { leastLots: 200, ...trip }),
        'bag-a': offer('cement', 50, { leastLots: 3 }),
        'bag-b': offer('cement', 25, { priceMinor: 45, transportMinor: 40 }),
        'rail-a': offer('rail', 3.6, { leastLots: 4, ...trip }),
        'rail-b': offer('rail', 4.27, { priceMinor: 130, transportMinor: 10 }),
        'mesh-a': offer('mesh', 1, { ...roll, lotName: 'metre', priceMinor: 100 }),
        'mesh-b': offer('mesh', 3, { ...roll, priceMinor: 250, leastLots: 2, transportMinor: 30 }),
        'sheet-a': offer('cover-sheet', 2.44, { ...sheet, transportMinor: 5 }),
        'sheet-b': offer('cover-sheet', 1.22, { ...sheet, priceMinor: 40, leastLots: 2 }),
      },
      { owned: { a: owned('rail', 2, 0, 3), b: owned('cover-sheet', 1, 0.8, 1) } },
    ),
    [],
  ],
  [
    'mesh by the least metres, and in strips',
    selling({ a: offer('mesh', 1, { ...roll, lotName: 'metre', leastLots: 40 }) }),
    [],
  ],
  ['mesh in strips from whole rolls', selling({ a: offer('mesh', 5, { ...roll, widthM: 0.5, leastLots: 9 }) }), []],
  [
    'a brick-thick kiln with arches on stepped ground under a roof',
    {
      ...base,
      walls: { ...brickWalls('brick-215-102-65', 'english'), liningM: 0.03, renderM: 0.015 },
      openings: { ...base.openings, head: 'arch' },
      ground: { ...onSlope, formation: 'stepped' },
      place: {
        ...base.place,
        shelter: 'open-roof',
        shelterHeadroomM: 1.8,
        shelterOverhangM: 1.5,
        houseM: 1,
        thatchM: 2,
      },
    },
    ['place.shelter-low'],
  ],
  [
    'steel over the openings of a pad on a slope',
    { ...base, openings: { ...base.openings, head: 'steel' }, ground: { ...onSlope, footing: 'pad' } },
    [],
  ],
  ['corbels over the openings', { ...base, openings: { ...base.openings, head: 'corbel' } }, []],
  ['clay on soft clay', { ...clayKiln, ground: { ...clayKiln.ground, projectionM: 0, thicknessM: 0.05 } }, []],
]
