import { describe, expect, it } from 'vitest'
import type { Finding } from '../../../src/core/basics/finding.ts'
import type { Offer, Plan } from '../../../src/core/plan/schema.ts'
import { workOut } from '../../../src/core/work-out.ts'
import { withValuesAt } from '../../../src/device/database/json.ts'
import { examplePlan, offered } from '../costs/plans.ts'

const base: Plan = { ...examplePlan('two-chambers'), offers: {} }
const offer = (item: string, lotSize: number, more: Partial<Offer> = {}): Offer =>
  offered(item, lotSize, 100, { lotName: 'piece', seller: 'timber', ...more })
const told = (plan: Plan, kind: string): Finding | undefined =>
  workOut(plan).findings.find((finding) => finding.kind === kind)

/** Every way out that a finding offers, taken: which of them leave it standing? */
function stillThere(plan: Plan, kind: string): readonly string[] {
  const finding = told(plan, kind)
  if (finding === undefined) throw new Error(`no ${kind}`)
  expect(finding.remedies.length).toBeGreaterThan(0)
  return finding.remedies
    .filter(({ set }) => told(withValuesAt(plan, set) as Plan, kind) !== undefined)
    .map((remedy) => remedy.kind)
}

describe('what cannot be cut', () => {
  it('a rail longer than all that is sold: shorter handles or a smaller chamber cure it, and all else is bought', () => {
    // Through rails are 780 + 2 · 200 = 1180 mm long.
    const plan = { ...base, offers: { short: offer('rail', 1.1), cement: offer('cement', 50) } }
    expect(stillThere(plan, 'buy.piece-too-long')).toEqual([])
    expect(told(plan, 'buy.piece-too-long')?.remedies.map(({ kind }) => kind)).toEqual(['set-handle', 'set-clear-side'])
    expect(workOut(plan).purchase.lines.find(({ item }) => item === 'cement')?.cost?.value).toBeGreaterThan(0)
  })

  it('no handle is offered that a hand cannot hold', () => {
    const plan = { ...base, offers: { short: offer('rail', 0.9) } }
    expect(told(plan, 'buy.piece-too-long')?.remedies.map(({ kind }) => kind)).toEqual(['set-clear-side'])
    expect(stillThere(plan, 'buy.piece-too-long')).toEqual([])
  })

  it('cover boards too short for the cover: a sheet needs none', () => {
    const plan: Plan = {
      ...base,
      trays: { ...base.trays, cover: 'board' },
      offers: { boards: offer('cover-board', 0.7, { widthM: 0.15 }) },
    }
    expect(stillThere(plan, 'buy.piece-too-long')).toEqual([])
  })

  it('a roll without a width takes the usual one of the trade at a tap', () => {
    const plan = { ...base, offers: { mesh: offer('mesh', 25, { lotName: 'roll', seller: 'hardware' }) } }
    expect(stillThere(plan, 'buy.width-missing')).toEqual([])
    expect(told(plan, 'buy.width-missing')?.remedies[0]?.set).toEqual({ 'offers.mesh.widthM': 0.9 })
  })

  it('rolls shorter than a square ask for a smaller chamber', () => {
    const plan = {
      ...base,
      offers: { mesh: offer('mesh', 0.6, { lotName: 'roll', seller: 'hardware', widthM: 0.9 }) },
    }
    expect(stillThere(plan, 'buy.roll-too-short')).toEqual([])
  })
})

describe('handles on a shared wall', () => {
  const onWall = (setbackM: number): Plan => ({
    ...base,
    walls: {
      ...base.walls,
      leaf: 'single',
      bond: 'stretcher',
      unit: { ...base.walls.unit, key: 'solid-450-125-225', lengthM: 0.45, widthM: 0.125, heightM: 0.225 },
    },
    trays: { ...base.trays, setbackM },
  })

  it('leave room for a hand, or the finding says by how much they do not, and what would', () => {
    // 125 − 2 · (30 + 20) = 25 mm between the frames.
    const finding = told(onWall(0.03), 'handles-close')
    expect(finding?.args['apart']).toEqual({ value: expect.closeTo(0.025, 9) as number, unit: 'm' })
    expect(stillThere(onWall(0.03), 'handles-close')).toEqual([])
    expect(told(onWall(0.02), 'handles-close')).toBeUndefined()
  })

  it('say nothing of a kiln with one chamber, nor where the trays clash outright', () => {
    expect(told({ ...onWall(0.03), chambers: { ...base.chambers, count: 1 } }, 'handles-close')).toBeUndefined()
    expect(told(onWall(0.045), 'handles-close')).toBeUndefined()
    expect(told(onWall(0.045), 'trays-clash')?.level).toBe('problem')
  })
})
