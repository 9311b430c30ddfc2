import { describe, expect, it } from 'vitest'
import { oblique } from '../../../../src/core/documents/drawings/axes.ts'
import { unitAt, viewOf, viewsOf } from '../../../../src/core/documents/drawings/views.ts'
import { areasOf, dimensionsOf, kilnOf, KILNS, ringArea } from './drawings.ts'

describe.each(KILNS)('drawings of %i chambers in %s', (count, unitKey) => {
  const kiln = kilnOf(count, unitKey)
  const { layout, geometry } = kiln
  const views = viewsOf(kiln)

  it('are to scale: every dimension line is as long as it says', () => {
    const wrong = views.flatMap((view) =>
      dimensionsOf(viewOf(view, kiln, kiln.findings)).filter(
        ({ fromM, toM, value }) => typeof value !== 'number' && Math.abs(Math.abs(toM - fromM) - value.lengthM) > 1e-9,
      ),
    )
    expect(wrong).toEqual([])
  })

  it('have nothing outside the paper', () => {
    const outside = views.filter((view) => {
      const drawing = viewOf(view, kiln, kiln.findings)
      const { x0M, x1M, y0M, y1M } = drawing.box
      // Ghosts of the next course may be a joint wider; nothing sticks out by more than a tenth of the drawing.
      const slackM = 0.1 * Math.max(x1M - x0M, y1M - y0M)
      return areasOf(drawing).some(({ rings }) =>
        rings
          .flat()
          .some(([xM, yM]) => xM < x0M - slackM || xM > x1M + slackM || yM < y0M - slackM || yM > y1M + slackM),
      )
    })
    expect(outside).toEqual([])
  })

  it('show in the courses every unit that is laid, each once', () => {
    const tags = views
      .filter((view) => view.startsWith('course-'))
      .flatMap((view) => areasOf(viewOf(view, kiln, [])).flatMap(({ tag }) => tag ?? []))
    expect(tags).toHaveLength(layout.counts.laid)
    expect(new Set(tags).size).toBe(layout.counts.laid)
  })

  it('cover a plain wall with its units and leave the joints', () => {
    const heightM = geometry.levels.aboveM + geometry.levels.belowM
    const areas = areasOf(viewOf('back', kiln, []))
    const units = areas
      .filter(({ ink }) => ink === 'unit' || ink === 'unit-cut' || ink === 'unit-ghost')
      .flatMap(({ rings }) => rings)
    const covered = units.reduce((sum, ring) => sum + ringArea(ring), 0)
    const face = layout.lengthM * heightM
    expect(covered).toBeLessThan(face)
    // Beds of 8 to 15 mm between units 65 to 225 high and perpends beside them: masonry is three quarters unit at the least.
    expect(covered).toBeGreaterThan(0.72 * face)
  })

  it('tell of the unit that was tapped', () => {
    const last = layout.courses.at(-1)
    for (const unit of layout.units.slice(last?.firstUnit, last?.endUnit)) {
      const [xM, yM] = [unit.xM + unit.dxM / 2, unit.yM + unit.dyM / 2]
      expect(unitAt(`course-${unit.course}`, kiln, [xM, yM], unit.course)?.unit.id).toBe(unit.id)
      expect(unitAt('inside', kiln, oblique(xM, yM, unit.zM + unit.dzM), unit.course)?.unit.id).toBe(unit.id)
    }
    for (const unit of layout.units.filter(({ wall, yM }) => wall === 'front' && yM < 1e-6))
      expect(unitAt('front', kiln, [unit.xM + unit.dxM / 2, unit.zM + unit.dzM / 2], 99)?.unit.id).toBe(unit.id)
    expect(unitAt('plan', kiln, [0.05, 0.05], 1)).toBeNull()
    expect(unitAt('back', kiln, [-5, 0], 1)).toBeNull()
  })

  it('build up: each course adds its own and takes nothing away but the top under it', () => {
    const shown = (course: number) =>
      areasOf(viewOf('inside', kiln, [])).filter(
        ({ shown: when }) =>
          when !== undefined && when.fromCourse <= course && (when.toCourse === undefined || course <= when.toCourse),
      )
    for (const [position, { index }] of layout.courses.entries()) {
      if (position === 0) continue
      const tops = shown(index).filter(({ ink, shown: when }) => ink === 'top' && when?.toCourse === index)
      expect(tops).toHaveLength(1)
      expect(shown(index).length).toBeGreaterThan(1)
    }
  })
})

describe('the oblique picture', () => {
  it('is a parallel projection: equal steps of the kiln are equal steps on paper, wherever they are', () => {
    const [x0, y0] = oblique(0, 0, 0)
    const [x1, y1] = oblique(1, 2, 3)
    const [a0, b0] = oblique(4, -1, 2)
    const [a1, b1] = oblique(5, 1, 5)
    expect(x1 - x0).toBeCloseTo(a1 - a0, 12)
    expect(y1 - y0).toBeCloseTo(b1 - b0, 12)
  })
})
