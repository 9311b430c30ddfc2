import { describe, expect, it } from 'vitest'
import { forAnyPlan } from './for-any-plan.ts'
import { toldFaults } from './told-faults.ts'

describe('what is told of any plan', () => {
  it('has a sentence, everything that the sentence asks for, and a field that holds the number said to be typed there', () => {
    forAnyPlan(120, (plan) => {
      expect(toldFaults(plan)).toEqual([])
    })
  }, 120_000)
})
