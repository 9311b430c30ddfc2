import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import fc from 'fast-check'
import { parsePlan } from '../../src/core/plan/parse-plan.ts'
import type { Plan } from '../../src/core/plan/schema.ts'
import { cases } from './cases.ts'
import { anyPlan } from './plans.ts'

const folder = path.join(import.meta.dirname, 'found')

/** Plans that once broke a law, as small as they could be made: every law of any plan is tried on each of them first. */
const found: readonly [Plan][] = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .map((name) => {
    const read = parsePlan(JSON.parse(readFileSync(path.join(folder, name), 'utf8')))
    if (!read.ok) throw new Error(`${name}: ${JSON.stringify(read.problems)}`)
    return [read.value]
  })

/**
 * Tries a law on the plans found before and on so many random ones. Where LAWS_KEEP is set (`npm run laws` sets it), the smallest
 * plan that breaks the law is kept in `found/`, to be named for what is wrong and committed with the cure.
 */
export function forAnyPlan(usual: number, law: (plan: Plan) => void): void {
  const run = fc.check(fc.property(anyPlan, law), { numRuns: found.length + cases(usual), examples: [...found] })
  if (!run.failed) return
  const [plan] = run.counterexample ?? []
  if (process.env['LAWS_KEEP'] !== undefined && plan !== undefined)
    writeFileSync(path.join(folder, `seed-${String(run.seed)}.json`), `${JSON.stringify(plan, null, 2)}\n`)
  fc.assert(fc.property(anyPlan, law), { seed: run.seed, path: run.counterexamplePath ?? '', endOnFailure: true })
}
