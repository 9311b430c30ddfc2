import { describe, expect, it } from 'vitest'
import { parsePlan } from '../../src/core/plan/parse-plan.ts'
import { workOut } from '../../src/core/work-out.ts'
import { rarePlans } from './rare-plans.ts'
import { onSite } from './shown.ts'
import { toldFaults } from './told-faults.ts'
import { workingFaults } from './working-faults.ts'

describe.each(rarePlans)('%s', (_, plan, findings) => {
  it('is a plan that the door lets in, and shows what it is meant to show', () => {
    expect(parsePlan(plan)).toMatchObject({ ok: true })
    const kinds = workOut(plan).findings.map(({ kind }) => kind)
    expect(findings.filter((kind) => !kinds.includes(kind))).toEqual([])
  })

  it('is told with words, sources and fields, and its workings give its numbers in their units', () => {
    expect([...toldFaults(plan), ...workingFaults(onSite(plan))]).toEqual([])
  })
})
