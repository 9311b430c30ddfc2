import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { acrossBand } from '../../src/core/geometry/footing-steps.ts'
import { kilnGeometry, type KilnGeometry } from '../../src/core/geometry/kiln.ts'
import { batteredDig, pitVolume } from '../../src/core/geometry/pit.ts'
import { clipped, type Shape } from '../../src/core/geometry/shape.ts'
import { planWith } from '../core/geometry/plans.ts'
import { box, overGround, prism, underGround, union } from '../core/geometry/solids.ts'
import { cases } from '../laws/cases.ts'

// Volumes of walls, trench, footing and soil against manifold-3d, a general solid-geometry library (Apache-2.0), which knows nothing of kilns.

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })

/** Slopes as a person would type them; below that the library itself rounds. */
const perMille = (most: number) => fc.integer({ min: -most, max: most }).map((rise) => rise / 1000)

const anyKiln = fc
  .record({
    count: fc.integer({ min: 1, max: 8 }),
    side: between(0.4, 2),
    wall: between(0.09, 0.24),
    projection: between(0, 0.3),
    thickness: between(0.05, 0.3),
    hardcore: fc.constantFrom(0, 0.1),
    hearth: fc.constantFrom(0, 0.05),
    across: fc.oneof(fc.constant(0), perMille(250)),
    back: fc.oneof(fc.constant(0), perMille(200)),
    strip: fc.constantFrom(true, true, false),
    stepped: fc.boolean(),
    coursesThick: fc.constantFrom(null, 1, 2),
    below: between(0.1, 0.5),
    gauge: between(0.07, 0.24),
  })
  .map((one) =>
    kilnGeometry(
      planWith(one.count, one.side, one.wall, (plan) => {
        plan.ground.projectionM = one.projection
        plan.ground.thicknessM = one.coursesThick === null ? one.thickness : one.coursesThick * one.gauge
        plan.ground.hardcoreM = one.hardcore
        plan.ground.hearthM = one.hearth
        plan.ground.slopeAcross = one.across
        plan.ground.slopeBack = one.back
        plan.ground.footing = one.strip ? 'strip' : 'pad'
        plan.ground.formation = one.stepped ? 'stepped' : 'level'
      }),
      { belowM: one.below, aboveM: 0.6, headM: 0.35, gaugeM: one.gauge },
    ),
  )

const DEEP = 10
/** Difference of two volumes, m³ and share of the whole taken together, in hundredths of a millionth. */
const gap = (ours: number, theirs: number) => (Math.abs(ours - theirs) / (1 + Math.abs(theirs))) * 1e8

/** Hearth bed of the plan: what the islands and the trench inside are levelled to. */
const bedLevel = ({ earthworks, chambers }: KilnGeometry) => {
  const [chamber] = chambers
  if (!chamber) throw new Error('no chamber')
  return -earthworks.hearthSlab.value / (chambers.length * (chamber.x1M - chamber.x0M) ** 2)
}

/** Parts of a shape over each level of footing, from footing top to a height. */
const overFooting = (shape: Shape, { footing }: KilnGeometry, toM: number) =>
  footing.steps.zones.flatMap((zone) => {
    const part = clipped(shape, acrossBand(footing.steps.axis, zone.fromM, zone.toM))
    const bed = footing.beds.find(({ step }) => step === zone.step)
    return part && bed && bed.topM < toM ? [prism(part, bed.topM, toM)] : []
  })

describe('against a solid-geometry library', { timeout: 60_000 }, () => {
  it('walls', () => {
    fc.assert(
      fc.property(anyKiln, (kiln) => {
        const walls = union(kiln.walls.map((wall) => box(wall, wall.z0M, wall.z1M)))
        expect(gap(kiln.wallVolumeGross.value, walls.volume())).toBeLessThan(1)
        const openings = union(kiln.openings.map((opening) => box(opening, opening.sillM, opening.headM)))
        expect(gap(kiln.openingVolume.value, walls.intersect(openings).volume())).toBeLessThan(1)
      }),
      { numRuns: cases(40) },
    )
  })

  it('dig under a tilted plane, in one level or in steps, with the ground taken off inside', () => {
    let stepped = 0
    fc.assert(
      fc.property(anyKiln, (kiln) => {
        if (kiln.footing.beds.length > 1) stepped++
        const trench = union(kiln.footing.beds.map((bed) => prism(bed.shape, bed.formationM, DEEP)))
        const islands = kiln.footing.shape.holes.map((hole) => box(hole, bedLevel(kiln), DEEP))
        expect(
          gap(kiln.earthworks.dig.value, underGround(union([trench, ...islands]), kiln.ground).volume()),
        ).toBeLessThan(1)
      }),
      { numRuns: cases(120) },
    )
    expect(stepped).toBeGreaterThan(3)
  })

  it('footing concrete, with the overlaps of its steps', () => {
    fc.assert(
      fc.property(anyKiln, (kiln) => {
        const { shape, beds, steps, thickness } = kiln.footing
        const slabs = beds.map((bed) => prism(bed.shape, bed.topM - thickness.value, bed.topM))
        const upper = steps.zones.flatMap((zone) => {
          const part = clipped(shape, acrossBand(steps.axis, zone.fromM, zone.toM))
          const bed = beds.find(({ step }) => step === zone.step)
          return part && bed ? [prism(part, bed.topM - thickness.value, bed.topM)] : []
        })
        expect(gap(kiln.footing.concrete.value, union([...slabs, ...upper]).volume())).toBeLessThan(1)
      }),
      { numRuns: cases(120) },
    )
  })

  it('wall under the ground and soil put back', () => {
    fc.assert(
      fc.property(anyKiln, (kiln) => {
        const bed = bedLevel(kiln)
        expect(
          gap(
            kiln.earthworks.wallBelow.value,
            underGround(union(overFooting(kiln.ring, kiln, DEEP)), kiln.ground).volume(),
          ),
        ).toBeLessThan(1)
        const outer = underGround(
          union(overFooting({ outline: kiln.footing.shape.outline, holes: [kiln.outside] }, kiln, DEEP)),
          kiln.ground,
        )
        const inner = kiln.chambers.flatMap((chamber, index) => {
          const island = kiln.footing.shape.holes[index]
          const over = overFooting({ outline: chamber, holes: island ? [island] : [] }, kiln, bed)
          return island ? [...over, overGround(box(island, -DEEP, bed), kiln.ground)] : over
        })
        expect(gap(kiln.earthworks.backfill.value, outer.volume() + union(inner).volume())).toBeLessThan(1)
      }),
      { numRuns: cases(100) },
    )
  })
})

describe('pits with leaning sides', () => {
  it('4 × 3 m at the bottom, 6 × 5 m at the top, 1 m deep is 20.3333 m³; the mean of the two ends would say 21.0', () => {
    // Plain geometry: 1/6 · (12 + 4 · 20 + 30) = 20.3333; (12 + 30) / 2 = 21.
    expect(pitVolume(4, 3, 6, 5, 1)).toBeCloseTo(20.3333, 4)
    expect((4 * 3 + 6 * 5) / 2).toBe(21)
  })

  it('a trench in sand leans back one in one round its islands', () => {
    // One chamber of 2.0 m, wall 0.2, projection 0.1, dug 0.3 m: pit 2.6 m square below, 3.2 m above; island 1.8 m below, 1.2 m above.
    // Frustum by the prismoidal rule from the same library's convex hull.
    const outline = { x0M: 0, x1M: 2.6, y0M: 0, y1M: 2.6 }
    const hole = { x0M: 0.4, x1M: 2.2, y0M: 0.4, y1M: 2.2 }
    const slab = (at: number, grow: number, rect: typeof outline) =>
      box({ x0M: rect.x0M - grow, x1M: rect.x1M + grow, y0M: rect.y0M - grow, y1M: rect.y1M + grow }, at, at + 1e-9)
    const pit = union([slab(0, 0, outline), slab(0.3, 0.3, outline)]).hull()
    const island = union([slab(0, 0, hole), slab(0.3, -0.3, hole)]).hull()
    expect(batteredDig({ outline, holes: [hole] }, 0.3)).toBeCloseTo(pit.subtract(island).volume(), 6)
  })
})
