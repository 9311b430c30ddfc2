import { describe, expect, it } from 'vitest'
import { CATALOGUE_MIXES, CATALOGUE_SOILS, CATALOGUE_UNITS } from '../../src/core/plan/catalogue.ts'
import { beddedAreaM2 } from '../../src/core/quantities/hollow-beds.ts'
import { SOURCES } from '../../src/core/sources/sources.ts'

const unit = (key: string) => {
  const found = CATALOGUE_UNITS.find((one) => one.key === key)
  if (found === undefined) throw new Error(key)
  return found
}

describe('wall units', () => {
  // Drawing of a 450 × 225 × 225 block with two cells of 150 × 125 mm: 37.0 % hollow, 0.01434 m³ solid, 8.44 litres of hollow (as given, rounded).
  it('a nine-inch block is 37.0 % hollow: 0.01434 m³ solid, 8.44 l hollow', () => {
    const block = unit('hollow-450-225-225')
    const grossM3 = block.lengthM * block.widthM * block.heightM
    const solidM3 = beddedAreaM2(block) * block.heightM
    expect(Math.abs(1 - solidM3 / grossM3 - 0.37)).toBeLessThan(0.0005)
    expect(Math.abs(solidM3 - 0.01434)).toBeLessThan(0.000005)
    expect(Math.abs(1000 * (grossM3 - solidM3) - 8.44)).toBeLessThan(0.005)
    expect(block.voidFraction).toBeCloseTo(1 - solidM3 / grossM3, 4)
  })

  // NCMA laboratory, Masonry Magazine, June 1989: hollow units of 6 inch 0.36–0.41 void, of 8 inch 0.47–0.49.
  it.each([
    ['hollow-390-140-190', 0.36, 0.41],
    ['hollow-390-190-190', 0.47, 0.49],
  ])('%s is hollow as measured', (key, least, most) => {
    const { voidFraction } = unit(key)
    expect(voidFraction).toBeGreaterThanOrEqual(least)
    expect(voidFraction).toBeLessThanOrEqual(most)
  })

  it.each(CATALOGUE_UNITS.map((one) => [one.key, one] as const))(
    '%s holds together: cells inside it and as large as its void',
    (_, one) => {
      const { lengthM, widthM, cells, voidFraction, joint } = one
      expect(joint.minM <= joint.usualM && joint.usualM <= joint.maxM).toBe(true)
      let end = 0
      for (const cell of cells) {
        expect(cell.fromM).toBeGreaterThan(end)
        end = cell.fromM + cell.lengthM
        expect(cell.widthM).toBeLessThan(widthM)
      }
      expect(end).toBeLessThan(lengthM)
      // Cells are drawn from the void fraction, to a tenth of a per cent of the unit.
      expect(Math.abs(1 - beddedAreaM2(one) / (lengthM * widthM) - voidFraction)).toBeLessThan(0.001)
    },
  )
})

describe('the data of the product', () => {
  it('names a source for every figure, and calls memory and practice by their name', () => {
    const named = [
      ...CATALOGUE_UNITS.flatMap(({ sources }) => Object.values(sources)),
      ...CATALOGUE_SOILS.flatMap(({ source, bulkingSource, digSource }) => [source, bulkingSource, digSource]),
      ...CATALOGUE_MIXES.concrete.map(({ source }) => source),
      ...CATALOGUE_MIXES.mortar.map(({ source }) => source),
      CATALOGUE_MIXES.cement.source,
    ]
    for (const source of named.filter((one) => one !== undefined)) {
      const { kind, ...print } = SOURCES[source] as { kind: string; author?: string; title?: string }
      expect([source, kind !== 'published' || (print.author !== undefined && print.title !== undefined)]).toEqual([
        source,
        true,
      ])
    }
    expect(SOURCES.memory.kind).toBe('memory')
    expect(SOURCES['common-practice'].kind).toBe('practice')
  })
})
