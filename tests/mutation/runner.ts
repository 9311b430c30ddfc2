import { setMaxListeners } from 'node:events'
import { writeFileSync } from 'node:fs'
import fc from 'fast-check'
import { TestRunner, type RunnerTask } from 'vitest'
import { awake, ownMs, TooLong } from './awake.ts'

/** That a law is broken is all that is asked: writing down the plan that breaks it takes longer than all the rest. */
const brief = ({ failed }: { readonly failed: boolean }): void => {
  if (failed) throw new Error('a law is broken')
}
fc.configureGlobal({ ...fc.readConfigureGlobal(), endOnFailure: true, reporter: brief })

/** What became of a mutant: by which test it was noticed, and whether by taking too long. */
interface Fate {
  readonly by: string
  readonly tooLong: boolean
}

// A test run again and again listens for its end each time.
setMaxListeners(0)

const LEAST_MS = 400

/**
 * Runs each test without a mutant, sees which it meets, and runs it again with each of those that nothing has noticed yet.
 * Nothing of the core outlives a call, so one process and one loading of the files serve them all; that this stays so is
 * seen from the test passing once more without a mutant.
 */
export default class MutationRunner extends TestRunner {
  readonly noticed = new Map<number, Fate>()
  readonly met = new Set<number>()

  async runTask(test: RunnerTask): Promise<void> {
    const run = TestRunner.getTestFn(test as never) as () => Promise<void>
    awake.met = new Set()
    const started = ownMs()
    await run()
    const tookMs = ownMs() - started
    for (const id of awake.met) this.met.add(id)
    const open = [...awake.met].filter((id) => !this.noticed.has(id))
    for (const id of open) {
      awake.id = id
      awake.turn++
      awake.untilMs = ownMs() + Math.max(LEAST_MS, 5 * tookMs)
      try {
        await run()
        if (ownMs() > awake.untilMs) throw new TooLong('far longer than without the mutant')
      } catch (error) {
        this.noticed.set(id, {
          by: `${test.file.name} > ${test.name}`,
          tooLong: (error as Error).name === 'TooLong' || ownMs() > awake.untilMs,
        })
      }
    }
    awake.id = 0
    awake.turn++
    awake.untilMs = Infinity
    if (open.length > 0) await run()
    const fates = { met: [...this.met], noticed: [...this.noticed] }
    writeFileSync(process.env['MUTANTS_FATES'] ?? '', JSON.stringify(fates))
  }
}
