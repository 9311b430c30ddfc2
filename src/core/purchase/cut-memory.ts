import { cutLengths } from '../cutting/cut-lengths.ts'
import { cutRoll } from '../cutting/cut-roll.ts'
import { cutSheets } from '../cutting/cut-sheets.ts'
import type { CuttingPlan, LengthJob } from '../cutting/length-job.ts'
import type { RollJob, RollPlan } from '../cutting/roll-job.ts'
import type { SheetJob, SheetPlan } from '../cutting/sheet-job.ts'

/** Cutting plans by the job they answer; filled as jobs are met. */
export interface CutMemory {
  readonly lengths: Map<string, CuttingPlan>
  readonly rolls: Map<string, RollPlan>
  readonly sheets: Map<string, SheetPlan>
}

/** A memory with nothing in it. */
export const cutMemory = (): CutMemory => ({ lengths: new Map(), rolls: new Map(), sheets: new Map() })

/** How cutting is worked out: how far beyond the least cost it looks for few patterns, and what jobs were met before. */
export interface CuttingEffort {
  readonly tidyNodes?: number
  readonly known?: CutMemory
}

/** A phone that is used all day meets many jobs and needs few of them again. */
const MOST_KEPT = 5000

function once<Job, Found>(cut: (job: Job) => Found, job: Job, known: Map<string, Found> | undefined): Found {
  if (known === undefined) return cut(job)
  const name = JSON.stringify(job)
  const found = known.get(name) ?? cut(job)
  if (known.size >= MOST_KEPT) known.clear()
  known.set(name, found)
  return found
}

/** `cutLengths`, answered from memory where the same was asked before. */
export const lengthsOnce = (job: LengthJob, effort?: CuttingEffort): CuttingPlan =>
  once(
    cutLengths,
    effort?.tidyNodes === undefined ? job : { ...job, tidyNodes: effort.tidyNodes },
    effort?.known?.lengths,
  )

/** `cutRoll`, answered from memory where the same was asked before. */
export const rollOnce = (job: RollJob, effort?: CuttingEffort): RollPlan => once(cutRoll, job, effort?.known?.rolls)

/** `cutSheets`, answered from memory where the same was asked before. */
export const sheetsOnce = (job: SheetJob, effort?: CuttingEffort): SheetPlan =>
  once(cutSheets, job, effort?.known?.sheets)
