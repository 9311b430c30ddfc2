import { describe, expect, it } from 'vitest'
import { newPlan } from '../../src/core/plan/defaults.ts'
import type { Plan } from '../../src/core/plan/schema.ts'
import { batchBox, batchesFor, mixedUses, unitsPerBatch } from '../../src/core/quantities/batch-box.ts'
import { openBedAreaM2 } from '../../src/core/quantities/hollow-beds.ts'
import type { Need } from '../../src/core/quantities/need.ts'
import { variantOf } from '../../src/core/quantities/variant.ts'
import { workOut } from '../../src/core/work-out.ts'

/**
 * One chamber with everything about it, worked by hand from plain geometry: 0.68 m clear, walls 140 mm, so 0.96 m over all; 390 × 140 × 190
 * blocks at 10 mm, three courses of 0.20 m above ground and one below; an opening 0.43 m wide under steel angles that lie in the bed joint at
 * 0.41 m, bearing 0.15 m; footing 0.10 m wider on each side and 0.10 m thick on 0.10 m of hardcore; hearth slab 0.05 m, apron 0.50 m wide; clay
 * lining 20 mm, render 15 mm, damp course; an open roof 0.50 m wider on each side and 2.40 m high. Concrete 1:2:4 at 1.54 takes 316.8 kg/m³,
 * mortar 1:5 at 1.33 319.2 kg/m³ (worked examples of the dry-volume method). What is common practice or from memory is said where it stands.
 */
const answers = {
  id: 'a',
  name: 'By hand',
  freshKgPerDay: 25,
  soil: 'sand-dense',
  currency: { code: 'XTS', digits: 0 },
}
const fresh = newPlan({ ...answers, unitKey: 'hollow-390-140-190' })
const plan: Plan = {
  ...fresh,
  chambers: { count: 1, clearSideM: 0.68 },
  walls: { ...fresh.walls, liningM: 0.02, renderM: 0.015 },
  openings: { ...fresh.openings, head: 'steel', widthM: 0.43, heightM: 0.4 },
  ground: { ...fresh.ground, hardcoreM: 0.1, hearthM: 0.05, apronM: 0.5, dampCourse: true },
  place: { ...fresh.place, shelter: 'open-roof', shelterOverhangM: 0.5, shelterHeadroomM: 2.4 },
}
// Worked out anew in each test: a fault put into the core on purpose is there while a test runs, not while its file is loaded.
const worked = () => workOut(plan)

const named = (needs: readonly Need[], item: string, use: string): Need => {
  const found = needs.filter((one) => one.item === item && one.use === use)
  const [only] = found
  if (only === undefined || found.length > 1) throw new Error(`${item} for ${use}: ${String(found.length)}`)
  return only
}
const needed = (item: string, use: string, of = worked().needs) => {
  const { section, net, waste } = named(of, item, use)
  return [section, expect.closeTo(net.value, 9) as number, waste.value]
}
const piecesOf = (item: string, use: string, of = worked().needs) =>
  named(of, item, use).pieces?.map(({ label, count, lengthM }) => [label, count, Number(lengthM.toFixed(6))])

describe('the ground of a chamber, by hand', () => {
  // (1.16² − 0.48²) · 0.10 = 0.11152; 0.68² · 0.05 = 0.02312; 0.96 · 0.50 · 0.075 = 0.036 (an apron of 75 mm, common practice).
  it('concrete of footing, hearth and apron: 0.17064 m³', () => {
    expect(needed('cement', 'footing')).toEqual(['ground', 0.17064 * 316.8, 0.1])
    expect(needed('sand', 'footing')).toEqual(['ground', 0.17064 * 0.44, 0.1])
    expect(needed('stone', 'footing')).toEqual(['ground', 0.17064 * 0.88, 0.1])
  })

  // Common practice: a fifth more loose stone than rammed. Laps of the damp course: a tenth. Walls along their middle: 4 · (0.68 + 0.14).
  it('hardcore 0.11152 m³, damp course 3.28 m', () => {
    expect(needed('hardcore', 'hardcore')).toEqual(['ground', 0.11152, 0.2])
    expect(needed('damp-course', 'damp-course')).toEqual(['ground', 3.28, 0.1])
  })

  it('lists neither where there is none, and the footing alone where there are no slabs', () => {
    const { needs } = workOut({
      ...plan,
      ground: { ...plan.ground, hardcoreM: 0, hearthM: 0, apronM: 0, dampCourse: false },
    })
    expect(needs.filter(({ item }) => item === 'hardcore' || item === 'damp-course')).toEqual([])
    const cement = named(needs, 'cement', 'footing').net
    expect(cement.value).toBeCloseTo(0.11152 * 316.8, 9)
    expect(cement.inputs['D']?.inputs['V']?.id).toBe('footing-concrete')
  })
})

describe('faces and heads of a chamber, by hand', () => {
  // Opening 0.43 · 0.41 = 0.1763 m². Inside (4 · 0.68 · 0.60 − 0.1763) · 0.02 = 0.029114 m³, clay 1.25 of loose (from memory).
  it('lining: 0.0363925 m³ of loose clay', () => {
    expect(needed('clay', 'lining')).toEqual(['walls', 0.029114 * 1.25, 0.1])
  })

  // Outside (4 · 0.96 · 0.60 − 0.1763) · 0.015 = 0.0319155 m³.
  it('render: 0.0319155 m³ of mortar', () => {
    expect(needed('cement', 'render')).toEqual(['walls', 0.0319155 * 319.2, 0.1])
  })

  // One angle for each 120 mm of wall (common practice): two, 0.43 + 2 · 0.15 = 0.73 m each.
  it('steel: two angles of 0.73 m, reckoned from width and bearing', () => {
    expect(piecesOf('angle', 'steel')).toEqual([['piece.angle', 2, 0.73]])
    expect(needed('angle', 'steel')).toEqual(['heads', 1.46, 0])
    expect(named(worked().needs, 'angle', 'steel').net.inputs['l']?.id).toBe('lintel.length')
    expect(worked().needs.filter(({ use }) => use === 'lintels')).toEqual([])
  })

  it('without lining, render and steel there is nothing of the kind on the list', () => {
    const bare = workOut({
      ...plan,
      walls: { ...plan.walls, liningM: 0, renderM: 0 },
      openings: { ...plan.openings, head: 'lintel' },
    })
    expect(bare.needs.filter(({ use }) => ['lining', 'render', 'steel'].includes(use))).toEqual([])
  })
})

describe('trays of a chamber, by hand', () => {
  // Frame 0.68 + 2 · (0.03 + 0.02) = 0.78: rails with handles 1.02, cross rails 0.74, one batten 0.74; eight trays; one plain sheet over them.
  it('rails, mesh and cover', () => {
    expect(piecesOf('rail', 'trays')).toEqual([
      ['piece.through-rail', 16, 1.02],
      ['piece.cross-rail', 16, 0.74],
      ['piece.batten', 8, 0.74],
    ])
    expect(needed('mesh', 'trays')).toEqual(['trays', 8 * 0.78 ** 2, 0])
    expect(piecesOf('mesh', 'trays')).toEqual([['piece.mesh', 8, 0.78]])
    expect(needed('cover-sheet', 'covers')).toEqual(['trays', 0.78 ** 2, 0])
    expect(piecesOf('cover-sheet', 'covers')).toEqual([['piece.cover', 1, 0.78]])
  })

  it('a tenth spare is whole spare pieces: 18, 18, 9 rails and nine squares of mesh', () => {
    const { needs } = workOut({ ...plan, waste: { ...plan.waste, timber: 0.1, mesh: 0.1 } })
    expect(piecesOf('rail', 'trays', needs)?.map(([, count]) => count)).toEqual([18, 18, 9])
    expect(piecesOf('mesh', 'trays', needs)?.map(([, count]) => count)).toEqual([9])
  })

  it('the number of battens is the one typed; that of the rails is practice', () => {
    const runs = Object.values(named(worked().needs, 'rail', 'trays').net.inputs)
    const each = runs.map(({ inputs }) => inputs['n']?.inputs['k'])
    expect(each.map((one) => [one?.value, one?.field ?? one?.source])).toEqual([
      [2, 'common-practice'],
      [2, 'common-practice'],
      [1, 'trays.battens'],
    ])
  })
})

describe('the open roof over a chamber, by hand', () => {
  // Common practice: falls 0.20 m in the metre, posts at most 2.40 m apart and 0.60 m in the ground, rafters 1.20 m, purlins 0.90 m apart, sheets of
  // 2.40 m that cover 0.75 m and lap 0.15 m, four nails at each crossing; a tie at both ends of posts and rafters and at each crossing.
  // Square of 0.96 + 2 · 0.50 = 1.96 m: high side 2.40 + 0.392 = 2.792, slope 1.96 · √1.04 = 1.998816 m; 2 posts a row, 3 rafters, 4 purlins,
  // 3 sheets, 3 · 4 · 4 = 48 nails at 100 in a kilogram (from memory), 2 · 2 + 2 · 3 + 3 · 4 = 22 ties; a tenth of fixings is lost.
  it('small: nothing is longer than the timber sold', () => {
    expect(piecesOf('roof-post', 'roof')).toEqual([
      ['piece.post', 2, 3.392],
      ['piece.post', 2, 3],
    ])
    expect(piecesOf('roof-rafter', 'roof')).toEqual([
      ['piece.beam', 2, 1.96],
      ['piece.rafter', 3, 1.998816],
      ['piece.purlin', 4, 1.96],
    ])
    expect(needed('roof-post', 'roof')).toEqual(['shelter', 2 * 3.392 + 2 * 3, 0])
    expect(needed('roof-rafter', 'roof')).toEqual(['shelter', 6 * 1.96 + 3 * 1.96 * Math.sqrt(1.04), 0])
    expect(needed('roof-sheet', 'roof')).toEqual(['shelter', 3, 0])
    expect(needed('roof-nails', 'roof')).toEqual(['shelter', 0.48, 0.1])
    expect(needed('roof-strap', 'roof')).toEqual(['shelter', 22, 0.1])
  })

  // 1.50 m wider: a square of 3.96 m, high side 3.192, slope 3.96 · √1.04 = 4.038425 m; front posts 3.792 m. Over 3.60 m a length is made of two.
  // 3 posts a row, 5 rafters, 6 purlins, 2 · 6 sheets, 6 · 6 · 4 = 144 nails, 6 + 10 + 30 = 46 ties.
  it('large: what is longer is joined of equal parts, and sheets lap down the slope', () => {
    const { needs } = workOut({ ...plan, place: { ...plan.place, shelterOverhangM: 1.5 } })
    expect(piecesOf('roof-post', 'roof', needs)).toEqual([
      ['piece.post', 6, 1.896],
      ['piece.post', 3, 3],
    ])
    expect(piecesOf('roof-rafter', 'roof', needs)).toEqual([
      ['piece.beam', 4, 1.98],
      ['piece.rafter', 10, 2.019212],
      ['piece.purlin', 12, 1.98],
    ])
    expect(needed('roof-sheet', 'roof', needs)).toEqual(['shelter', 12, 0])
    expect(needed('roof-nails', 'roof', needs)).toEqual(['shelter', 1.44, 0.1])
    expect(needed('roof-strap', 'roof', needs)).toEqual(['shelter', 46, 0.1])
  })

  it('none: nothing of it is listed', () => {
    const { needs } = workOut({ ...plan, place: { ...plan.place, shelter: 'none' } })
    expect(needs.filter(({ section }) => section === 'shelter')).toEqual([])
  })
})

describe('beds over hollow cells', () => {
  const cell = { fromM: 0, lengthM: 0.15, widthM: 0.1 }
  const unit = (course: number, ...cellsOpen: boolean[]) => ({ course, cellsOpen }) as never
  // Plain geometry: 0.15 · 0.10 = 0.015 m² for each cell that stands on one; the lowest course stands on concrete.
  it('count cells that stand on cells, and none on the footing', () => {
    const courses = [-1, 0, 1].map((index) => ({ index }) as never)
    const units = [unit(-1, true, true), unit(0, true, false), unit(1, true, true)]
    expect(openBedAreaM2({ courses, units }, [cell, cell])).toBeCloseTo(3 * 0.015, 12)
    expect(openBedAreaM2({ courses, units }, [])).toBe(0)
  })
})

describe('mixing by hand', () => {
  const nominal = { cement: 1, sand: 2, stone: 4, dryFactor: 1.54 }
  const clay = { cement: 0, clay: 1, sand: 2, dryFactor: 1.33 }
  const batching = (change: Partial<Plan['built']['batch']>, mixes: Partial<Plan['mixes']>): Plan => ({
    ...plan,
    ground: { ...plan.ground, panM3: 0.02, barrowM3: 0.06 },
    mixes: { ...plan.mixes, ...mixes },
    built: { ...plan.built, batch: { ...plan.built.batch, ...change } },
  })

  // Water by the bag, common practice: at most 28 litres for concrete, 30 for mortar.
  it('two bags take twice the water of one; cement begins with its own bags', () => {
    const batch = batchBox(batching({ bags: 2 }, { concrete: nominal }), 'concrete')
    expect(batch.water?.value).toBe(56)
    expect(batchBox(batching({ bags: 2 }, {}), 'mortar').water?.value).toBe(60)
    expect(batch.parts.map(({ volume }) => volume.id)).toEqual(['batch.cement', 'batch.sand-dry', 'batch.stone-dry'])
  })

  // 50 kg at 1440 kg/m³ are 34.72 litres: 1.736 pans of 20, 0.579 barrows of 60, 3.472 buckets of 10.
  it.each([
    ['pan', 1.7361],
    ['barrow', 0.5787],
    ['bucket', 3.4722],
  ] as const)('a bag by the %s is %d', (measure, count) => {
    const [cement] = batchBox(batching({ measure, bucketM3: 0.01, bags: 1 }, { concrete: nominal }), 'concrete').parts
    expect(cement?.measures.value).toBeCloseTo(count, 4)
    expect(cement?.measures.inputs['m']?.field).toMatch(measure)
  })

  // Clay alone: 1 m³ of mortar is 1.33 m³ of dry stuff, a third of it clay; a quarter of the dry volume in water (common practice).
  it('clay mortar: a third clay, two thirds sand, 332.5 litres to the cubic metre', () => {
    const { needs, layout } = workOut(batching({}, { mortar: clay }))
    const sand = named(needs, 'sand', 'joints').net
    const wetM3 = (sand.value * 3) / 2 / 1.33
    expect(wetM3).toBeLessThan(layout.mortarM3)
    expect(named(needs, 'clay', 'joints').net.value).toBeCloseTo((wetM3 * 1.33) / 3, 12)
    expect(named(needs, 'water', 'joints').net.value).toBeCloseTo(wetM3 * 332.5, 9)
    expect(needs.filter(({ item, use }) => item === 'cement' && use === 'joints')).toEqual([])
  })

  it('is of concrete for the footing and of mortar for joints and render; clay of the lining is no mix', () => {
    expect(mixedUses(worked().needs)).toEqual([
      { use: 'footing', mix: 'concrete' },
      { use: 'joints', mix: 'mortar' },
      { use: 'render', mix: 'mortar' },
    ])
  })

  // A batch of one bag lays the units of the walls shared out over the bags of their mortar: 32 · 50 / (cement with a tenth for waste), whole.
  it('a batch lays its share of the units', () => {
    const { needs } = worked()
    const laid = named(needs, 'wall-unit', 'walls').net
    const cementKg = named(needs, 'cement', 'joints').gross.value
    expect(unitsPerBatch(batchBox(batching({ bags: 1 }, {}), 'mortar'), needs, laid)?.value).toBe(
      Math.floor((laid.value * 50) / cementKg),
    )
  })

  it('knows no batches of a mix that the list has not', () => {
    const batch = batchBox(plan, 'mortar')
    expect(batchesFor(batch, worked().needs, 'lintels')).toBeNull()
    expect(unitsPerBatch(batch, [], named(worked().needs, 'wall-unit', 'walls').net)).toBeNull()
  })
})

describe('arches of brick', () => {
  // Volumes close: joints of the courses and of the arches together are the mortar; 1:5 at 1.33 takes 319.2 kg/m³. Solid bricks leave no open bed.
  it('add their joints to the mortar and their bricks to the count', () => {
    const brick = newPlan({ ...answers, unitKey: 'brick-215-102-65' })
    const { needs, layout } = workOut({ ...brick, openings: { ...brick.openings, head: 'arch' } })
    const arches = layout.openings.map(({ arch }) => arch?.mortarM3 ?? 0)
    expect(arches.every((mortarM3) => mortarM3 > 0)).toBe(true)
    const mortarM3 = arches.reduce((sum, one) => sum + one, layout.mortarM3)
    expect(named(needs, 'cement', 'joints').net.value).toBeCloseTo(mortarM3 * 319.2, 6)
    expect(layout.counts.archUnits).toBeGreaterThan(0)
    const { net } = named(needs, 'wall-unit', 'walls')
    const courses = Object.values(net.inputs['w']?.inputs ?? {}).map(({ id }) => id)
    // Laid a half-brick thick, all bricks of an arch are bats cut from whole ones, so that the courses alone hold whole bricks.
    expect([...new Set(courses)]).toEqual(['wall.course-whole'])
    const thick = workOut({
      ...brick,
      walls: { ...brick.walls, leaf: 'one-brick', bond: 'english' },
      openings: { ...brick.openings, head: 'arch' },
    })
    const bricks = named(thick.needs, 'wall-unit', 'walls').net.inputs['w']?.inputs ?? {}
    expect(Object.values(bricks).map(({ id }) => id)).toContain('wall.voussoirs')
  })
})

describe('units broken on the site', () => {
  const broken = (units: number) =>
    workOut({ ...plan, built: { ...plan.built, broken: { a: { units, day: '2026-01-05', who: '' } } } }).needs
  // 32 blocks and a twentieth for breakage: 1.6. Two broken are 0.4 too many; one is not.
  it('are bought again only beyond the allowance', () => {
    const laid = named(worked().needs, 'wall-unit', 'walls')
    expect(laid.net.value * laid.waste.value).toBeCloseTo(1.6, 12)
    expect(needed('wall-unit', 'broken', broken(2))).toEqual(['walls', 0.4, 0])
    expect(broken(1).filter(({ use }) => use === 'broken')).toEqual([])
  })
})

describe('the make of an item', () => {
  it('is the unit of the walls, the section of the rails, and nothing for all else', () => {
    expect([variantOf(plan, 'wall-unit'), variantOf(plan, 'rail'), variantOf(plan, 'cement')]).toEqual([
      'hollow-390-140-190',
      '20x60',
      '',
    ])
  })
})
