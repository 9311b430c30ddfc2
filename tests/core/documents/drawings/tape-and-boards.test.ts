import { describe, expect, it } from 'vitest'
import { boardView } from '../../../../src/core/documents/drawings/cutting-view.ts'
import { sheetView } from '../../../../src/core/documents/drawings/sheet-view.ts'
import type { Shape } from '../../../../src/core/documents/drawings/drawing.ts'
import { settingOutView } from '../../../../src/core/documents/drawings/setting-out-view.ts'
import { drawnTimes, tapeView } from '../../../../src/core/documents/drawings/tape-view.ts'
import { cutLengths } from '../../../../src/core/cutting/cut-lengths.ts'
import { cutSheets } from '../../../../src/core/cutting/cut-sheets.ts'
import { settingOut } from '../../../../src/core/geometry/setting-out.ts'
import { adjustTapes } from '../../../../src/core/geometry/tape-check.ts'
import { areasOf, kilnOf, ringArea } from './drawings.ts'

const kiln = kilnOf(2, 'hollow-450-150-225')
const { pegs, tapes, steps } = settingOut(kiln.geometry, kiln.site.facing, 0)
const corners = tapes.filter(({ kind }) => kind !== 'bay')

const arrowsOf = (shapes: readonly Shape[]) =>
  shapes.filter((shape): shape is Extract<Shape, { kind: 'arrow' }> => shape.kind === 'arrow')

describe('the tape diagram', () => {
  it('of perfect tapes is the plan itself, with nothing to move', () => {
    const read = adjustTapes(
      pegs,
      corners.map(({ from, to, planM }) => ({ from, to, lengthM: planM })),
    )
    if (!read.ok) throw new Error('refused')
    expect(drawnTimes(pegs, read.value.pegs)).toBe(1)
    expect(arrowsOf(tapeView(pegs, tapes, read.value).shapes)).toEqual([])
  })

  it('points each arrow from where the peg stands to where it belongs, drawn so many times too long', () => {
    // A parallelogram leaning right by 12 mm at the back: both back pegs must go left, the front ones stay. Lengths by Pythagoras.
    const [, b, c] = pegs
    const L = b?.xM ?? 0
    const D = c?.yM ?? 0
    const leaning = (from: string, to: string) => {
      const at = (id: string) => {
        const peg = pegs.find((one) => one.id === id)
        return [(peg?.xM ?? 0) + (id === 'C' || id === 'D' ? 0.012 : 0), peg?.yM ?? 0] as const
      }
      const [[x0, y0], [x1, y1]] = [at(from), at(to)]
      return Math.hypot(x1 - x0, y1 - y0)
    }
    const read = adjustTapes(
      pegs,
      corners.map(({ from, to }) => ({ from, to, lengthM: leaning(from, to) })),
    )
    if (!read.ok) throw new Error('refused')
    const view = tapeView(pegs, tapes, read.value)
    const times = drawnTimes(pegs, read.value.pegs)
    const arrows = arrowsOf(view.shapes)
    expect(arrows).toHaveLength(2)
    for (const { from, to } of arrows) {
      expect(to[0] - from[0]).toBeCloseTo(-0.012 * times, 4)
      expect(to[1] - from[1]).toBeCloseTo(0, 4)
    }
    // Exaggeration never passes a tenth of the diagonal, and it says by how much.
    expect(0.012 * times).toBeLessThan(0.1 * Math.hypot(L, D))
    expect(view.shapes).toContainEqual(expect.objectContaining({ key: 'drawing.tape-times', args: { times } }))
  })
})

describe('pegging out', () => {
  it('drives pegs before it uses them and tapes what it says', () => {
    const driven: string[] = []
    const early: string[] = []
    for (const step of steps) {
      const named = settingOutView(step).shapes.flatMap((shape) =>
        shape.kind === 'peg' && shape.name !== undefined ? [{ name: shape.name, isDriven: shape.driven }] : [],
      )
      early.push(...named.flatMap(({ name, isDriven }) => (isDriven && !driven.includes(name) ? [name] : [])))
      driven.push(...named.flatMap(({ name, isDriven }) => (isDriven ? [] : [name])))
      for (const { from, to, lengthM } of step.diagram.taped)
        expect(Math.hypot(to.xM - from.xM, to.yM - from.yM)).toBeCloseTo(lengthM, 9)
    }
    expect(early).toEqual([])
    expect(driven).toEqual(['A', 'B', 'D', 'C'])
  })
})

describe('boards and sheets', () => {
  it('carry marks in running measure with the saw between', () => {
    // By hand: four pieces of 780 with a 3 mm saw end at 780, 1563, 2346 and 3129 of a 3600 board, and 468 are left after the last cut.
    const { patterns } = cutLengths({
      pieces: [{ lengthM: 0.78, count: 4 }],
      stock: [{ key: 'a', lengthM: 3.6, priceMinor: 100 }],
      kerfM: 0.003,
      keepM: 0.3,
    })
    expect(patterns).toHaveLength(1)
    const [pattern] = patterns
    if (pattern === undefined) throw new Error('nothing cut')
    const { shapes } = boardView(pattern)
    const running = shapes.find((shape) => shape.kind === 'running')
    expect(running?.marksM.map((markM) => Math.round(markM * 1000))).toEqual([0, 780, 1563, 2346, 3129, 3600])
    const offcut = shapes.find((shape) => shape.kind === 'area' && shape.ink === 'offcut')
    const xs = offcut?.kind === 'area' ? offcut.rings.flat().map(([xM]) => Math.round(xM * 1000)) : []
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([3132, 3600])
  })

  it('show pieces, offcuts and saw cuts that fill the sheet', () => {
    const { sheets } = cutSheets({
      pieces: [{ lengthM: 0.78, widthM: 0.78, count: 3 }],
      sheets: [{ key: 'a', lengthM: 2.44, widthM: 1.22, priceMinor: 1 }],
      kerfM: 0.003,
    })
    expect(sheets).toHaveLength(1)
    const [sheet] = sheets
    if (sheet === undefined) throw new Error('nothing cut')
    const areas = areasOf(sheetView(sheet)).filter(({ ink }) => ink !== 'outline')
    const drawn = areas.flatMap(({ rings }) => rings).reduce((sum, ring) => sum + ringArea(ring), 0)
    expect(drawn + sheet.kerfM2).toBeCloseTo(2.44 * 1.22, 6)
  })
})
