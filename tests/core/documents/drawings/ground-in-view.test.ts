import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { elevationView } from '../../../../src/core/documents/drawings/elevation-view.ts'
import { frontView } from '../../../../src/core/documents/drawings/front-view.ts'
import { sectionView } from '../../../../src/core/documents/drawings/section-view.ts'
import type { Drawing } from '../../../../src/core/documents/drawings/drawing.ts'
import { newPlan } from '../../../../src/core/plan/defaults.ts'
import { workOut } from '../../../../src/core/work-out.ts'
import { areasOf } from './drawings.ts'

const onSlope = (slopeAcross: number, slopeBack: number, formation: 'level' | 'stepped', thicknessM = 0.25) => {
  const plan = newPlan({
    id: 'slope',
    name: 'Slope',
    freshKgPerDay: 80,
    unitKey: 'hollow-390-190-190',
    soil: 'sand-dense',
    currency: { code: 'XOF', digits: 0 },
  })
  return workOut({
    ...plan,
    chambers: { ...plan.chambers, count: 3 },
    ground: { ...plan.ground, slopeAcross, slopeBack, formation, thicknessM },
  })
}

/** The ends of the ground's lines, from left to right. */
const ground = ({ shapes }: Drawing) =>
  shapes.flatMap((shape) => (shape.kind === 'line' && shape.ink === 'ground' ? [shape.points] : []))

const slopeOf = (drawing: Drawing): number[] =>
  ground(drawing).map((points) => {
    const [first, last] = [points[0] ?? [0, 0], points.at(-1) ?? [0, 0]]
    return (last[1] - first[1]) / (last[0] - first[0])
  })

describe('ground as seen before a face', () => {
  it('rises to the right across the front, and to the left across the back', () => {
    const worked = onSlope(0.06, -0.03, 'level')
    const back = elevationView(worked, worked.layout, 'back')
    expect(slopeOf(frontView(worked, worked.layout, []))[0]).toBeCloseTo(0.06, 9)
    expect(slopeOf(back)[0]).toBeCloseTo(-0.06, 9)
    // Seen from the left side, the back is at the left hand.
    expect(slopeOf(elevationView(worked, worked.layout, 'left'))[0]).toBeCloseTo(0.03, 9)
    expect(slopeOf(elevationView(worked, worked.layout, 'right'))[0]).toBeCloseTo(-0.03, 9)
    for (const slope of slopeOf(sectionView(worked, worked.layout))) expect(slope).toBeCloseTo(-0.03, 9)
  })

  it('passes through the front left peg at its level', () => {
    const worked = onSlope(0.06, 0.02, 'level')
    const [[from, to] = []] = ground(frontView(worked, worked.layout, []))
    if (from === undefined || to === undefined) throw new Error('no ground')
    expect(from[1] - 0.06 * from[0]).toBeCloseTo(0, 9)
    expect(to[1] - 0.06 * to[0]).toBeCloseTo(0, 9)
  })

  it('shows each length of a stepped footing at its own level, the higher lying over the lower', () => {
    const worked = onSlope(-0.12, 0, 'stepped')
    const { beds, steps, thickness } = worked.geometry.footing
    expect(beds.length).toBeGreaterThan(1)
    const front = frontView(worked, worked.layout, [])
    const rings = areasOf(front).find(({ ink }) => ink === 'concrete-hidden')?.rings ?? []
    const tops = rings.map((ring) => Math.max(...ring.map(([, zM]) => zM)))
    expect(tops).toEqual(beds.map(({ topM }) => topM))
    const ends = rings.map(
      (ring) => [Math.min(...ring.map(([xM]) => xM)), Math.max(...ring.map(([xM]) => xM))] as const,
    )
    const [high, low] = ends
    if (high === undefined || low === undefined) throw new Error('no steps')
    expect(high[1] - low[0]).toBeCloseTo(steps.overlapM, 9)
    const sawn = areasOf(sectionView(worked, worked.layout)).find(({ ink }) => ink === 'concrete')
    for (const ring of sawn?.rings ?? []) {
      const heights = ring.map(([, zM]) => zM)
      expect(Math.max(...heights) - Math.min(...heights)).toBeCloseTo(thickness.value, 9)
    }
  })

  it('never leaves a unit, a bed or the ground out of the drawing', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.15, max: 0.15, noNaN: true }),
        fc.double({ min: -0.15, max: 0.15, noNaN: true }),
        fc.constantFrom('level' as const, 'stepped' as const),
        (across, back, formation) => {
          const worked = onSlope(across, back, formation)
          const { layout } = worked
          const views = [
            frontView(worked, layout, []),
            sectionView(worked, layout),
            ...layout.walls.map(({ wall }) => elevationView(worked, layout, wall)),
          ]
          for (const { box, shapes } of views) {
            const points = shapes.flatMap((shape) =>
              shape.kind === 'area' ? shape.rings.flat() : shape.kind === 'line' ? shape.points : [],
            )
            expect(Math.min(...points.map(([, zM]) => zM))).toBeGreaterThanOrEqual(box.y0M - 1e-9)
          }
        },
      ),
      { numRuns: 40 },
    )
  })
})
