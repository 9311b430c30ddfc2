import { describe, expect, it } from 'vitest'
import { soilByHand, SOIL_TABLE, testsAsked, type HandTests } from '../../../src/core/geometry/soil-test.ts'
import { CATALOGUE_SOILS } from '../../../src/core/plan/catalogue.ts'

const tests: HandTests = { ground: 'natural', handful: 'sticky-ribbon', thumb: 'moderate', picketM: 0.1 }
const soilOf = (change: Partial<HandTests>) => {
  const result = soilByHand({ ...tests, ...change })
  return result.ok ? result.value.soil : result.problems
}

describe('soil by hand', () => {
  // Canadian housing table of allowable bearing pressures: clay is stiff when hard to indent by the thumb, firm when indented by moderate
  // pressure, soft when easily penetrated; sand is loose when a 2 × 2 inch picket goes in 8 inches (200 mm) or more under a person's weight.
  it.each([
    ['hardly', 'clay-stiff'],
    ['moderate', 'clay-firm'],
    ['sinks-easily', 'clay-soft'],
  ] as const)('clay that the thumb marks "%s" is %s', (thumb, soil) => expect(soilOf({ thumb })).toBe(soil))

  it.each([
    [0.19, 'sand-dense'],
    [0.21, 'sand-loose'],
  ])('sand that lets the picket in %s m is %s', (picketM, soil) =>
    expect(soilOf({ handful: 'falls-apart', thumb: null, picketM })).toBe(soil),
  )

  it.each(['filled', 'peat', 'cracks-wide', 'mud', 'unsure'] as const)(
    '%s ground is not to build on, whatever else was found',
    (ground) => expect(soilOf({ ground, handful: null, thumb: null, picketM: null })).toBe('not-to-build'),
  )

  it('a doubt counts as the weaker', () => {
    expect(soilOf({ thumb: 'unsure' })).toBe('clay-soft')
    expect(soilOf({ handful: 'unsure' })).toBe('clay-soft')
  })

  it('asks for the test that decides next, and only for that', () => {
    expect(soilOf({ ground: null })).toEqual([{ kind: 'test-missing', test: 'ground' }])
    expect(soilOf({ handful: null })).toEqual([{ kind: 'test-missing', test: 'handful' }])
    expect(soilOf({ thumb: null })).toEqual([{ kind: 'test-missing', test: 'thumb' }])
    expect(soilOf({ handful: 'stones', picketM: null })).toEqual([{ kind: 'test-missing', test: 'picketM' }])
  })

  it('goes from the ground to the test that decides, and no further', () => {
    const none = { ground: null, handful: null, thumb: null, picketM: null }
    expect(testsAsked(none)).toEqual({ asked: ['ground'], verdict: null })
    expect(testsAsked({ ...none, ground: 'peat' })).toEqual({
      asked: ['ground'],
      verdict: { soil: 'not-to-build', row: 'peat' },
    })
    const sand = { ...none, ground: 'natural', handful: 'falls-apart' } as const
    expect(testsAsked(sand)).toEqual({ asked: ['ground', 'handful', 'picketM'], verdict: null })
    expect(testsAsked({ ...sand, picketM: 0.3, thumb: 'hardly' }).verdict?.soil).toBe('sand-loose')
    // Canadian housing table: clay is stiff when it is hard to indent by the thumb; the picket must hold too before it is believed.
    expect(testsAsked({ ...tests, thumb: 'hardly', picketM: null }).asked).toEqual([
      'ground',
      'handful',
      'thumb',
      'picketM',
    ])
  })

  it('refuses a picket longer than pickets are', () => {
    expect(soilOf({ picketM: 20 })).toEqual([{ kind: 'picket-out-of-range', picketM: 20 }])
    expect(soilOf({ picketM: Number.NaN })).toEqual([{ kind: 'picket-out-of-range', picketM: Number.NaN }])
  })

  it('every full set of answers has one class, and every class but one can be reached by hand', () => {
    const reached = new Set<string>()
    for (const ground of ['natural', 'filled', 'peat', 'cracks-wide', 'mud', 'unsure'] as const)
      for (const handful of [
        'falls-apart',
        'stones',
        'crumbles',
        'sticky-ribbon',
        'hard-red',
        'rock',
        'unsure',
      ] as const)
        for (const thumb of ['sinks-easily', 'moderate', 'hardly', 'unsure'] as const)
          for (const picketM of [0, 0.2, 0.5]) {
            const result = soilByHand({ ground, handful, thumb, picketM })
            if (!result.ok) throw new Error(JSON.stringify({ ground, handful, thumb, picketM }))
            reached.add(result.value.soil)
          }
    expect([...reached].toSorted()).toEqual(CATALOGUE_SOILS.map((soil) => soil.key).toSorted())
    expect(new Set(SOIL_TABLE.map((row) => row.id)).size).toBe(SOIL_TABLE.length)
  })
})
