import * as z from 'zod/mini'
import upkeepJson from '../../../shared/upkeep.json' with { type: 'json' }
import { cited, counted, derive, type Derived } from '../basics/derived.ts'
import type { TrayFrame } from '../fish/tray-frame.ts'
import type { Plan, Upkeep } from '../plan/schema.ts'
import type { Need } from '../quantities/need.ts'
import { mortarNeeds } from '../quantities/mix-needs.ts'
import { trayNeeds } from '../quantities/tray-needs.ts'
import { SOURCES, type SourceId } from '../sources/sources.ts'
import { dayNumber, dayText } from './day-number.ts'

const source = z.custom<SourceId>((value) => typeof value === 'string' && value in SOURCES)
const PARTS = ['walls', 'lining', 'fill', 'trays', 'mesh', 'cover', 'hearth'] as const
const UPKEEP_DATA = z
  .object({
    parts: z.array(z.strictObject({ key: z.enum(PARTS), everyDays: z.number(), source })),
    crackM3: z.number(),
    source,
  })
  .parse(upkeepJson)

export type UpkeepPart = Upkeep['part']

/** A part of the kiln and when it wants looking at next. */
export interface UpkeepDue {
  readonly part: UpkeepPart
  readonly every: Derived<'day'>
  readonly lastDay: string | null
  readonly dueDay: string | null
  /** Days past due; below zero where there is time yet; null without any day to count from. */
  readonly late: number | null
  /** Faults found and not yet mended. */
  readonly bad: number
}

const partsOf = ({ walls }: Plan) =>
  UPKEEP_DATA.parts.filter(
    ({ key }) => (key !== 'lining' || walls.liningM > 0) && (key !== 'fill' || walls.fill !== 'none'),
  )

/** Parts with their next dates, most overdue first. `readyDay` is when the kiln was first used; `today` comes from outside. */
export function upkeepDue(plan: Plan, readyDay: string | null, today: string): UpkeepDue[] {
  const now = dayNumber(today)
  const due = partsOf(plan).map(({ key, everyDays, source: from }): UpkeepDue => {
    const records = recordsOf(plan, key)
    const lastDay = records.at(-1)?.day ?? readyDay
    const last = lastDay === null ? null : dayNumber(lastDay)
    const dueNumber = last === null ? null : last + everyDays
    return {
      part: key,
      every: cited('upkeep.every', 'day', everyDays, from),
      lastDay,
      dueDay: dueNumber === null ? null : dayText(dueNumber),
      late: dueNumber === null || now === null ? null : now - dueNumber,
      bad: badOf(records),
    }
  })
  return due.toSorted((a, b) => (b.late ?? Number.NEGATIVE_INFINITY) - (a.late ?? Number.NEGATIVE_INFINITY))
}

const recordsOf = ({ run }: Plan, part: UpkeepPart): readonly Upkeep[] =>
  Object.values(run.upkeep)
    .filter((record) => record.part === part)
    .toSorted((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0))

/** What was found since the last mending. */
function badOf(records: readonly Upkeep[]): number {
  let bad = 0
  for (const record of records) bad = record.mended ? 0 : bad + record.bad
  return bad
}

/** Trays to make anew, squares of mesh to change on sound frames, covers to make anew. */
export interface TrayRepair {
  readonly trays: number
  readonly mesh: number
  readonly covers: number
}

/** What was found bad of the trays and stands open. */
export const traysToMend = (plan: Plan): TrayRepair => ({
  trays: badOf(recordsOf(plan, 'trays')),
  mesh: badOf(recordsOf(plan, 'mesh')),
  covers: badOf(recordsOf(plan, 'cover')),
})

/** What to buy to mend everything that stands open: new trays, mesh and covers as they were made, mortar for cracks and lining. */
export function repairNeeds(plan: Plan, tray: TrayFrame): Need[] {
  const bad = (part: UpkeepPart) => badOf(recordsOf(plan, part))
  const cracks = bad('walls') + bad('lining')
  return [
    ...trayRepairNeeds(plan, tray, traysToMend(plan)),
    ...(cracks > 0 ? mortarNeeds(crackVolume(cracks), 'walls', 'repair', plan) : []),
  ]
}

/** What a repair of trays takes, each part made as the plan has it. */
export function trayRepairNeeds(plan: Plan, tray: TrayFrame, { trays, mesh, covers }: TrayRepair): Need[] {
  const needs: Need[] = []
  if (trays > 0) needs.push(...traysOnly(plan, tray, trays, 'repair.trays'))
  if (mesh > 0)
    needs.push(
      ...traysOnly(plan, tray, mesh, 'repair.mesh').filter(({ item }) => item === 'mesh' || item === 'staples'),
    )
  if (covers > 0) needs.push(...coversOnly(plan, tray, covers))
  return needs
}

/** Trays without their covers: with a plain sheet for a cover no rail belongs to it. */
const traysOnly = (plan: Plan, tray: TrayFrame, count: number, id: string): Need[] =>
  trayNeeds(
    { ...plan, trays: { ...plan.trays, cover: 'sheet' } },
    { ...tray, count: counted(id, 'piece', count) },
  ).filter(({ item }) => item !== 'cover-sheet')

/** Covers without trays: one to a chamber, and as many chambers as there are covers to make. */
const coversOnly = (plan: Plan, tray: TrayFrame, covers: number): Need[] =>
  trayNeeds(
    { ...plan, chambers: { ...plan.chambers, count: covers } },
    { ...tray, count: counted('repair.trays', 'piece', 0) },
  )
    .filter(({ gross }) => gross.value > 0)
    .map((need) => (need.pieces ? { ...need, pieces: need.pieces.filter(({ count }) => count > 0) } : need))

function crackVolume(cracks: number): Derived<'m3'> {
  const n = counted('repair.cracks', 'piece', cracks)
  const each = cited('repair.crack', 'm3', UPKEEP_DATA.crackM3, UPKEEP_DATA.source)
  return derive('repair.mortar', 'm3', 'n · v', { n, v: each }, (v) => v.n * v.v)
}
