import { describe, expect, it } from 'vitest'
import { kilnGeometry } from '../../../src/core/geometry/kiln.ts'
import { levelCheck } from '../../../src/core/geometry/level-check.ts'
import { batteredDig } from '../../../src/core/geometry/pit.ts'
import { centroidOf, clipped, rect } from '../../../src/core/geometry/shape.ts'
import { settingOut } from '../../../src/core/geometry/setting-out.ts'
import { adjustTapes } from '../../../src/core/geometry/tape-check.ts'
import { tapesToTake } from '../../../src/core/geometry/tape-plan.ts'
import { facingOf } from '../../../src/core/geometry/wind.ts'
import type { Plan } from '../../../src/core/plan/schema.ts'
import { LEVELS, planWith } from './plans.ts'

/**
 * Pegging out two chambers by hand, all by plain geometry: 0.68 m clear, walls 0.16 m, so 1.84 m by 1.00 m; trench 0.10 m wider on each side, 0.30 m deep
 * with 0.10 m of concrete; pegs and boards 1 m beyond the trench. A front left, B front right, C back right, D back left.
 */
const plan = (change: (plan: Plan) => void = () => undefined) => planWith(2, 0.68, 0.16, change)
const outFor = (one: Plan) => settingOut(kilnGeometry(one, LEVELS), facingOf(one), one.place.declinationDeg)
/** Set out anew in each test: a fault put into the core on purpose is there while a test runs, not while its file is loaded. */
const out = () => outFor(plan())

const mm = (lengthM: number) => Math.round(lengthM * 1000)
const stepOf = (id: string, of = out()) => {
  const found = of.steps.find((one) => one.id === id)
  if (found === undefined) throw new Error(id)
  return found
}
const numbersOf = (id: string, of = out()) =>
  Object.fromEntries(Object.entries(stepOf(id, of).numbers).map(([name, { value }]) => [name, mm(value)]))
type Place = { readonly xM: number; readonly yM: number }
const at = ({ xM, yM }: Place) => [mm(xM), mm(yM)]
/** What a step draws, in millimetres: only what there is. */
function drawn(id: string, of = out()) {
  const { driven, now, strings, arcs, taped, marked, rows, running, cut } = stepOf(id, of).diagram
  const all = {
    driven: driven.map((peg) => peg.id).join(''),
    now: now.map((peg) => [peg.id, ...at(peg)]),
    strings: strings.map(({ from, to }) => [...at(from), ...at(to)]),
    arcs: arcs.map(({ centre, radiusM }) => [...at(centre), mm(radiusM)]),
    taped: taped.map(({ from, to, lengthM }) => [from.id, to.id, mm(lengthM)]),
    marked: marked.map(({ x0M, x1M, y0M, y1M }) => [x0M, x1M, y0M, y1M].map(mm)),
    rows: rows.map(({ side, marksM }) => [side, ...marksM.map(mm)]),
    running: running.map(mm),
    cut: cut === null ? [] : [cut.widthM, cut.depthM, cut.pegsM].map(mm),
  }
  return Object.fromEntries(Object.entries(all).filter(([, list]) => list.length > 0))
}
const FRONT = [0, 0, 1840, 0]
const LEFT = [0, 0, 0, 1000]
/** Strings from peg to peg 1.10 m past the corners, along the four outside faces. */
const AROUND = [
  [-1100, 0, 2940, 0],
  [1840, -1100, 1840, 2100],
  [2940, 1000, -1100, 1000],
  [0, 2100, 0, -1100],
]

describe('the steps of pegging out, by hand', () => {
  it('clears a rectangle 1.10 m wider on each side', () => {
    expect(drawn('clear')).toEqual({
      marked: [
        [-1100, 2940, -1100, 2100],
        [0, 1840, 0, 1000],
      ],
      rows: [
        ['bottom', -1100, 0, 1840, 2940],
        ['left', -1100, 0, 1000, 2100],
      ],
    })
    expect(numbersOf('clear')).toEqual({ length: 1840, depth: 1000, beyond: 1100 })
    expect(out().steps.map(({ caution }) => caution)).toEqual([
      'look-up',
      ...Array.from({ length: 8 }, () => null),
      'trench-edge',
      null,
    ])
  })

  it('begins with A and a string along the front, then B', () => {
    expect(drawn('front-line')).toEqual({ now: [['A', 0, 0]], strings: [FRONT] })
    expect(drawn('front-length')).toEqual({
      driven: 'A',
      now: [['B', 1840, 0]],
      strings: [FRONT],
      taped: [['A', 'B', 1840]],
    })
  })

  // Strings reach 1.00 m past the corners: (1.84 + 1) ÷ 4 = 0.71, (1.00 + 1) ÷ 3 = 0.667: down to 0.05 m, 0.65: 1.95, 2.60 and 3.25 m.
  it('squares the corner with 1.95, 2.60 and 3.25 m', () => {
    expect(numbersOf('square')).toEqual({ long: 2600, short: 1950, slant: 3250 })
    expect(drawn('square')).toEqual({
      driven: 'AB',
      now: [['square-short', 0, 1950]],
      strings: [FRONT, [0, 0, 0, 1950]],
      arcs: [
        [0, 0, 1950],
        [2600, 0, 3250],
      ],
      taped: [
        ['A', 'square-long', 2600],
        ['A', 'square-short', 1950],
        ['square-long', 'square-short', 3250],
      ],
    })
  })

  it('goes back to D, swings C in from B and D, and checks the diagonals of 2.094 m', () => {
    expect(drawn('depth')).toEqual({
      driven: 'AB',
      now: [['D', 0, 1000]],
      strings: [FRONT, LEFT],
      taped: [['A', 'D', 1000]],
    })
    expect(drawn('fourth-peg')).toEqual({
      driven: 'ABD',
      now: [['C', 1840, 1000]],
      strings: [FRONT, LEFT],
      arcs: [
        [1840, 0, 1000],
        [0, 1000, 1840],
      ],
      taped: [
        ['B', 'C', 1000],
        ['D', 'C', 1840],
      ],
    })
    expect(drawn('diagonals')).toEqual({
      driven: 'ABCD',
      strings: [FRONT, [1840, 0, 1840, 1000], [1840, 1000, 0, 1000], LEFT],
      taped: [
        ['A', 'C', 2094],
        ['B', 'D', 2094],
      ],
    })
  })

  it('sets two pegs for each face', () => {
    expect(drawn('offsets')).toEqual({
      driven: 'ABCD',
      now: [
        ['A-front', -1100, 0],
        ['B-front', 2940, 0],
        ['B-right', 1840, -1100],
        ['C-right', 1840, 2100],
        ['C-back', 2940, 1000],
        ['D-back', -1100, 1000],
        ['D-left', 0, 2100],
        ['A-left', 0, -1100],
      ],
      strings: AROUND,
    })
    expect(out().boards.map(({ kind, at: { value, id } }) => [kind, mm(value), id])).toEqual([
      ['trench-outside', -100, 'board-trench-outside'],
      ['outside', 0, 'board-outside'],
      ['inside', 160, 'board-inside'],
      ['trench-inside', 260, 'board-trench-inside'],
    ])
    const pad = outFor(plan((one) => (one.ground.footing = 'pad')))
    expect(pad.boards.map(({ kind }) => kind)).toEqual(['trench-outside', 'outside', 'inside'])
  })

  it('marks the trench and the islands it leaves', () => {
    expect(drawn('dig-lines')).toEqual({
      strings: AROUND,
      marked: [
        [-100, 1940, -100, 1100],
        [260, 740, 260, 740],
        [1100, 1580, 260, 740],
      ],
      rows: [
        ['bottom', -100, 0, 1840, 1940],
        ['top', -100, 260, 740, 1100, 1580, 1940],
        ['left', -100, 260, 740, 1100],
      ],
    })
    // 2.04 · 1.20 − 2 · 0.48² = 1.9872 m².
    expect(stepOf('dig-lines').numbers['area']?.value).toBeCloseTo(1.9872, 12)
  })

  it('levels: pegs stand as high over the bottom as the concrete, and as the hardcore under it', () => {
    expect(drawn('levels')).toEqual({ cut: [360, 300, 100] })
    expect(numbersOf('levels')).toEqual({ depth: 300, over: 100, top: 200 })
    const bedded = outFor(plan((one) => (one.ground.hardcoreM = 0.15)))
    expect(drawn('levels', bedded)).toEqual({ cut: [360, 450, 250] })
    const pad = outFor(plan((one) => (one.ground.footing = 'pad')))
    expect(drawn('levels', pad)).toEqual({ cut: [600, 300, 100] })
  })

  it('shows how area and concrete of a level footing come about', () => {
    const { footing } = kilnGeometry(plan(), LEVELS)
    expect(footing.area.formula).toBeTypeOf('string')
    expect(footing.concrete.formula).toBeTypeOf('string')
    expect(footing.concrete.value).toBeCloseTo(0.19872, 12)
  })

  it('marks the walls in one pull of the tape', () => {
    expect(drawn('wall-marks')).toEqual({
      strings: AROUND,
      marked: [
        [0, 1840, 0, 1000],
        [160, 840, 160, 840],
        [1000, 1680, 160, 840],
      ],
      rows: [['left', 0, 160, 840, 1000]],
      running: [0, 160, 840, 1000, 1680, 1840],
    })
  })

  it('says more where the place asks for it', () => {
    const noted = (of: ReturnType<typeof out>) =>
      of.steps.filter(({ notes }) => notes.length > 0).map(({ id, notes }) => [id, ...notes])
    const always = [
      ['offsets', 'boards'],
      ['wall-marks', 'running'],
    ]
    expect(noted(out())).toEqual([['front-line', 'no-wind'], ...always])
    const windy = (declinationDeg: number) =>
      outFor(plan((one) => Object.assign(one.place, { windDayDeg: 90, declinationDeg })))
    expect(noted(windy(0))).toEqual([['front-line', 'bearing', 'needle'], ...always])
    expect(noted(windy(3))).toEqual([['front-line', 'bearing'], ...always])
    const sloped = (formation: Plan['ground']['formation']) =>
      outFor(plan((one) => Object.assign(one.ground, { slopeBack: -0.24, formation, thicknessM: 0.25 })))
    expect(stepOf('levels', sloped('level')).notes).toEqual(['slope'])
    expect(stepOf('levels', sloped('stepped')).notes).toEqual(['steps'])
    // The front looks east: north lies to the left of whoever faces the kiln, and on the plan to the right.
    const { north, numbers } = stepOf('front-line', windy(3))
    expect([north?.xM, north?.yM].map((part) => Math.round(part ?? 9))).toEqual([1, -0])
    expect([numbers['bearing']?.value, numbers['compass']?.value]).toEqual([0, 357])
  })
})

describe('tapes to take, by hand', () => {
  // Between the chambers, at 0.92 m: F1 in front, K1 behind. Diagonals of a bay √(0.92² + 1) = 1.359.
  it('sides, diagonals, and along, across and through each bay', () => {
    expect(
      tapesToTake(kilnGeometry(plan(), LEVELS)).map(({ from, to, kind, planM }) => [from + to, kind, mm(planM)]),
    ).toEqual([
      ['AB', 'side', 1840],
      ['BC', 'side', 1000],
      ['CD', 'side', 1840],
      ['DA', 'side', 1000],
      ['AC', 'diagonal', 2094],
      ['BD', 'diagonal', 2094],
      ['AF1', 'bay', 920],
      ['F1B', 'bay', 920],
      ['DK1', 'bay', 920],
      ['K1C', 'bay', 920],
      ['F1K1', 'bay', 1000],
      ['AK1', 'bay', 1359],
      ['F1D', 'bay', 1359],
      ['F1C', 'bay', 1359],
      ['BK1', 'bay', 1359],
    ])
  })
})

describe('a figure that is out of square, by hand', () => {
  // D and C stand 20 mm to the right: at A and C the corner is narrower by atan(0.02 / 1) = 1.1458°, at B and D wider.
  it('tells the corners that are wide and those that are narrow', () => {
    const pegs = [
      { id: 'A', xM: 0, yM: 0 },
      { id: 'B', xM: 1.84, yM: 0 },
      { id: 'C', xM: 1.84, yM: 1 },
      { id: 'D', xM: 0, yM: 1 },
    ]
    const side = Math.hypot(0.02, 1)
    const result = adjustTapes(
      pegs,
      Object.entries({ AB: 1.84, BC: side, CD: 1.84, DA: side, AC: Math.hypot(1.86, 1), BD: Math.hypot(1.82, 1) }).map(
        ([ends, lengthM]) => ({ from: ends.charAt(0), to: ends.charAt(1), lengthM }),
      ),
    )
    const corners = result.ok ? result.value.corners : []
    expect(corners.map(({ peg, offSquareDeg }) => [peg, Math.round(offSquareDeg * 1e4)])).toEqual([
      ['A', -11458],
      ['B', 11458],
      ['C', -11458],
      ['D', 11458],
    ])
  })
})

describe('levels of a footing, by hand', () => {
  const pegs = [
    { id: 'A', xM: 0, yM: 0 },
    { id: 'B', xM: 2, yM: 0 },
    { id: 'C', xM: 2, yM: 1 },
    { id: 'D', xM: 0, yM: 1 },
  ]
  const joint = { minM: 0.008, usualM: 0.01, maxM: 0.015 }
  const check = (...downs: readonly number[]) => {
    const found = levelCheck(
      pegs,
      downs.map((downM, index) => ({ peg: 'ABCD'.charAt(index), downM })),
      joint,
    )
    if (!found.ok) throw new Error('refused')
    return found.value
  }
  // From 8 to 15 mm a joint takes up 7 mm and no more.
  it('a fall of 7 mm is taken up by the joint, of 9 mm is raised by 2 mm', () => {
    const just = check(1.2, 1.207, 1.207, 1.2)
    expect(just.corners.map(({ jointM, raiseM }) => [Math.round(jointM * 1e4), raiseM])).toEqual([
      [80, 0],
      [150, 0],
      [150, 0],
      [80, 0],
    ])
    expect([just.toRaise, just.accepted]).toEqual([[], true])
    const more = check(1.2, 1.209, 1.209, 1.2)
    expect(more.corners.map(({ raiseM }) => Math.round(raiseM * 1e4))).toEqual([0, 20, 20, 0])
    expect([more.toRaise, more.accepted]).toEqual([['B', 'C'], false])
    // Lower by 7 mm at 2 m to the right, not at all to the back, and no corner off that plane.
    expect(just.riseAcross).toBeCloseTo(-0.0035, 12)
    expect(just.riseBack).toBeCloseTo(0, 12)
    expect(just.twistM).toBeCloseTo(0, 12)
  })
  // One corner 7 mm low, 1.75 on the mean: 10 − 1.75 would be 8.25 mm, but then the low corner would want 15.25.
  it('one low corner thins the joints of all the others, so that nothing is raised', () => {
    const { corners } = check(1.2, 1.207, 1.2, 1.2)
    expect(corners.map(({ jointM, raiseM }) => [Math.round(jointM * 1e5), raiseM])).toEqual([
      [800, 0],
      [1500, 0],
      [800, 0],
      [800, 0],
    ])
  })
  // One corner 8 mm low: the best plane through a rectangle leaves a quarter of it at each corner.
  it('one low corner is a twist of a quarter of it', () => {
    expect(check(1.2, 1.208, 1.2, 1.2).twistM).toBeCloseTo(0.002, 12)
  })
})

describe('areas and pits, by hand', () => {
  it('what only touches shares nothing', () => {
    const shape = { outline: rect(0, 2, 0, 1), holes: [rect(0.5, 1, 0.2, 0.8)] }
    expect(clipped(shape, rect(2, 3, 0, 1))).toBeNull()
    expect(clipped(shape, rect(0, 2, 1, 2))).toBeNull()
    expect(clipped(shape, rect(0, 0.5, 0, 1))).toEqual({ outline: rect(0, 0.5, 0, 1), holes: [] })
    expect(clipped(shape, rect(0.75, 3, 0.5, 3))).toEqual({
      outline: rect(0.75, 2, 0.5, 1),
      holes: [rect(0.75, 1, 0.5, 0.8)],
    })
  })
  // Outline 2 × 1 with a hole 0.5 × 0.6 about (0.75, 0.5): x = (2 · 1 − 0.3 · 0.75) / 1.7 = 1.044118.
  it('the centre of area lies away from a hole', () => {
    const centre = centroidOf({ outline: rect(0, 2, 0, 1), holes: [rect(0.5, 1, 0.2, 0.8)] })
    expect(centre.xM).toBeCloseTo(1.775 / 1.7, 12)
    expect(centre.yM).toBeCloseTo(0.5, 12)
    expect(centroidOf({ outline: rect(1, 3, 2, 4), holes: [rect(1, 3, 2, 4)] })).toEqual({ xM: 2, yM: 3 })
  })
  // 4 × 2 m, 0.5 m deep, sides one in one: 5 × 3 on top, 0.5 / 6 · (8 + 4 · 11.25 + 15) = 5.666667. The island of 2 × 0.4 m ends where its
  // slopes meet, 0.2 m up: 0.2 / 6 · (0.8 + 4 · 0.36 + 0) = 0.074667.
  it('a trench in loose sand round a narrow island: 5.592 m³', () => {
    const shape = { outline: rect(0, 4, 0, 2), holes: [rect(1, 3, 0.8, 1.2)] }
    expect(batteredDig(shape, 0.5)).toBeCloseTo(5.592, 9)
  })
})

describe('winds on a front, by hand', () => {
  // Bounds half-way between the eight main points: 22.5, 67.5, 112.5 degrees.
  it.each([
    [0, 'into'],
    [22.5, 'into'],
    [22.6, 'slanting'],
    [67.5, 'slanting'],
    [292.5, 'slanting'],
    [67.6, 'from-side'],
    [112.5, 'from-side'],
    [247.5, 'from-side'],
    [112.6, 'from-behind'],
    [180, 'from-behind'],
  ])('a wind from %d° on a front to the north is %s', (deg, expected) => {
    const place = { facing: 'own' as const, frontDeg: 0, windDayDeg: deg, windNightDeg: null, declinationDeg: 0 }
    const facing = facingOf(plan((one) => Object.assign(one.place, place)))
    expect([facing.day, facing.night, facing.by]).toEqual([expected, null, null])
  })

  it('says what the rule was and where it is from', () => {
    const facing = (rule: Plan['place']['facing'], day: number | null, night: number | null) => {
      const { front, by } = facingOf(
        plan((one) => Object.assign(one.place, { facing: rule, windDayDeg: day, windNightDeg: night })),
      )
      return [front?.value, front?.source, by]
    }
    expect(facing('into-wind', 200, 20)).toEqual([200, 'common-practice', 'day'])
    expect(facing('into-wind', null, 20)).toEqual([20, 'common-practice', 'night'])
    expect(facing('lee', 200, null)).toEqual([20, 'memory', 'day'])
    expect(facing('lee', null, null)).toEqual([undefined, undefined, null])
  })
})
