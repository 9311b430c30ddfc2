import { bad, good, type Result } from '../../core/basics/result.ts'
import { parsePlan, type PlanProblem } from '../../core/plan/parse-plan.ts'
import { PLAN_FORMAT, type Plan } from '../../core/plan/schema.ts'
import { crc32 } from '../database/crc32.ts'
import { isRecord, sameJson } from '../database/json.ts'
import { documentFromOutside, readPlan } from '../database/plan-document.ts'
import { receiptsNamed } from '../receipts/receipt-key.ts'
import { fromBase64, toBase64 } from './bytes-text.ts'
import { readReceipts, type ReceiptsRead } from './receipt-files.ts'
import { readJson } from './safe-json.ts'

const FILE_FORMAT = 'kilnwright-file'
const FILE_VERSION = 1
const BACKUP_FORMAT = 'kilnwright-backup'
const CHANGES_FORMAT = 'kilnwright-changes'
export const MOST_FILE_BYTES = 5 * 1024 * 1024

/** Why a file cannot be opened. Nothing was changed. */
export type FileProblem =
  | { readonly kind: 'too-big'; readonly sizeBytes: number; readonly mostBytes: number }
  | { readonly kind: 'not-ours' }
  | { readonly kind: 'damaged'; readonly field: string }
  /** Changes that build on others which never came here: the whole plan is needed. */
  | { readonly kind: 'gap' }
  | { readonly kind: 'newer'; readonly theirVersion: number; readonly ourVersion: number }

/** A plan from a file; with its document it can be merged, without it only stand beside. */
export interface FilePlan {
  readonly plan: Plan
  readonly document: Uint8Array | null
  /** Pictures of receipts that came along; absent where the file has no room for any. */
  readonly pictures?: ReceiptsRead
}

export interface PlanFile {
  readonly fileName: string
  readonly text: string
}

/**
 * A file to hand on: the plan for whoever wants to read it, and the document for the next phone.
 * `plan` is given as it is kept, so that a plan that this version cannot read can be handed on untouched; `stored` then holds what the phone has, byte for byte.
 */
export function writePlanFile(
  name: string,
  plan: unknown,
  document: Uint8Array,
  stored?: readonly Uint8Array[],
): PlanFile {
  const file = {
    format: FILE_FORMAT,
    version: FILE_VERSION,
    plan,
    document: toBase64(document),
    check: crc32(document),
    ...(stored && { stored: stored.map(toBase64) }),
  }
  return { fileName: `${fileNameFrom(name)}.kilnwright.json`, text: `${JSON.stringify(file, null, 1)}\n` }
}

/** A file of changes only: in a plain envelope the bytes that a link or a code would carry, what was not chosen left out. `name` is what the file is called. */
export function writeChangesFile(name: string, handOver: Uint8Array): PlanFile {
  const file = { format: CHANGES_FORMAT, version: FILE_VERSION, handOver: toBase64(handOver) }
  return { fileName: `${fileNameFrom(name)}.kilnwright.json`, text: `${JSON.stringify(file)}\n` }
}

/** Room for the envelope and for what one more plan could take. */
const MOST_BACKUP_CHARS = MOST_FILE_BYTES / 2

/** Several plans' files in one, for keeping; in more than one where they would be too big to be opened again. `stem` names them. */
export function writeBackups(files: readonly PlanFile[], stem: string): PlanFile[] {
  const parts: string[][] = [[]]
  let chars = 0
  for (const { text } of files) {
    if (chars > 0 && chars + text.length > MOST_BACKUP_CHARS) {
      parts.push([])
      chars = 0
    }
    parts.at(-1)?.push(text.trim())
    chars += text.length
  }
  return parts.map((texts, index) => ({
    fileName: `${stem}${parts.length > 1 ? `-${String(index + 1)}` : ''}.kilnwright.json`,
    text: `{"format":"${BACKUP_FORMAT}","version":${String(FILE_VERSION)},"files":[\n${texts.join(',\n')}\n]}\n`,
  }))
}

/** Letters and digits of any script; what a file system could trip over becomes a dash. */
const fileNameFrom = (name: string): string =>
  name
    .normalize('NFC')
    .replaceAll(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 60) || 'plan'

const asFileProblem = (problem: PlanProblem): FileProblem => {
  if (problem.kind === 'not-a-plan') return { kind: 'damaged', field: 'plan' }
  return problem.kind === 'damaged' ? { kind: 'damaged', field: problem.field } : problem
}

const firstProblem = (problems: readonly PlanProblem[]): FileProblem =>
  asFileProblem(problems[0] ?? { kind: 'not-a-plan' })

/** What a file holds: plans that can be read, changes to plans as packed for a hand-over, and what is wrong with the others. */
export interface FilePlans {
  readonly plans: readonly FilePlan[]
  readonly changes: readonly Uint8Array[]
  readonly problems: readonly FileProblem[]
}

/** Reads a file's text: a back-up of several plans, our envelope of one, changes to one, or a bare plan. */
export function readPlanFile(text: string): FilePlans {
  const read = readJson(text)
  if (!read.ok) {
    const looksOurs = text.trimStart().startsWith('{') && text.includes('kilnwright')
    return { plans: [], changes: [], problems: [looksOurs ? { kind: 'damaged', field: 'file' } : { kind: 'not-ours' }] }
  }
  const file = read.value
  if (isRecord(file) && file['format'] === CHANGES_FORMAT) return changesIn(file)
  const isBackup = isRecord(file) && file['format'] === BACKUP_FORMAT && Array.isArray(file['files'])
  const results = (isBackup ? (file['files'] as unknown[]) : [file]).map(readRecord)
  return {
    plans: results.flatMap((result) => (result.ok ? [result.value] : [])),
    changes: [],
    problems: results.flatMap((result) => (result.ok ? [] : result.problems)),
  }
}

function changesIn({ version, handOver }: Record<string, unknown>): FilePlans {
  const bytes = typeof handOver === 'string' ? fromBase64(handOver) : null
  const problem = versionProblem(version) ?? (bytes === null ? ({ kind: 'damaged', field: 'handOver' } as const) : null)
  return { plans: [], changes: bytes && problem === null ? [bytes] : [], problems: problem === null ? [] : [problem] }
}

function versionProblem(version: unknown): FileProblem | null {
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return { kind: 'damaged', field: 'version' }
  return version > FILE_VERSION ? { kind: 'newer', theirVersion: version, ourVersion: FILE_VERSION } : null
}

function readRecord(file: unknown): Result<FilePlan, FileProblem> {
  if (!isRecord(file)) return bad({ kind: 'not-ours' })
  if (file['format'] === PLAN_FORMAT) return alone(file)
  if (file['format'] !== FILE_FORMAT) return bad({ kind: 'not-ours' })
  const { version, plan, document, check } = file
  const problem = versionProblem(version)
  if (problem !== null) return bad(problem)
  const readable = alone(plan)
  if (!readable.ok) return readable
  if (typeof document !== 'string') return bad(NO_DOCUMENT)
  const read = withDocument(readable.value.plan, document, check)
  if (!read.ok || file['receipts'] === undefined) return read
  return good({ ...read.value, pictures: readReceipts(file['receipts'], receiptsNamed(read.value.plan)) })
}

const NO_DOCUMENT: FileProblem = { kind: 'damaged', field: 'document' }

function alone(raw: unknown): Result<FilePlan, FileProblem> {
  const plan = parsePlan(raw)
  return plan.ok ? good({ plan: plan.value, document: null }) : bad(firstProblem(plan.problems))
}

/** Plan and document must say the same: where they do not, something happened to the file on its way. */
function withDocument(plan: Plan, text: string, check: unknown): Result<FilePlan, FileProblem> {
  const document = fromBase64(text)
  if (document === null || crc32(document) !== check) return bad(NO_DOCUMENT)
  const doc = documentFromOutside(document)
  if (!doc.ok) return bad(NO_DOCUMENT)
  const kept = readPlan(doc.value)
  doc.value.destroy()
  if (!kept.ok) return bad(firstProblem(kept.problems))
  return sameJson(kept.value, plan) ? good({ plan, document }) : bad(NO_DOCUMENT)
}

/** Reads a file that someone chose. */
export async function readChosenFile(file: Blob): Promise<FilePlans> {
  const fault = (problem: FileProblem): FilePlans => ({ plans: [], changes: [], problems: [problem] })
  if (file.size > MOST_FILE_BYTES) return fault({ kind: 'too-big', sizeBytes: file.size, mostBytes: MOST_FILE_BYTES })
  try {
    return readPlanFile(await file.text())
  } catch {
    return fault({ kind: 'damaged', field: 'file' })
  }
}
