import { bad, good, type Result } from '../../core/basics/result.ts'
import { isRecord } from '../../device/database/json.ts'
import { documentFrom, documentFromOutside, readPlan } from '../../device/database/plan-document.ts'
import { encodeDocument, markOf, stateOf } from '../../device/database/document-bytes.ts'
import type { FileProblem, PlanFile } from '../../device/sharing/plan-file.ts'
import type { Frames } from '../../device/sharing/frames.ts'
import type { Private } from '../../device/sharing/chosen.ts'
import { documents } from './documents-later.ts'
import { exportFiles } from './file-actions.ts'
import { keeper, sessionOf } from './keeper.ts'
import { isHere, takeDocument } from './take-document.ts'

export type { CameraProblem } from '../../device/sharing/camera.ts'

/** A plan, or what changed in it since the last hand-over, ready to go by any way. */
export interface HandOverOffer {
  readonly sizeBytes: number
  /** False where only the changes go. */
  readonly isWhole: boolean
  /** True where changes were asked for and there are none since then. */
  readonly isNothing: boolean
  /** When another phone last got this plan from here, or null. */
  readonly lastMs: number | null
  /** The part of a link after #; null where it is too long. */
  readonly fragment: string | null
  /** What the plan, or its changes, weigh as a file. */
  readonly fileBytes: number
  /** The changes as a file, called `name`; null where all of it goes. */
  readonly changesFile: ((name: string) => PlanFile) | null
  /** The codes to show in turn; null where they would be too many. */
  readonly frames: Frames | null
  /** To be called when the other phone has it: the next hand-over of changes begins here. */
  readonly arrived: () => Promise<void>
}

const noteOf = (planId: string): string => `handed-over:${planId}`

/** What the other phone got last time, and when. */
async function lastHandOver(
  planId: string,
): Promise<{ readonly state: Uint8Array; readonly mark: unknown; readonly atMs: number } | null> {
  const { shelf } = await keeper()
  const note = await shelf.note(noteOf(planId))
  if (!isRecord(note) || !(note['state'] instanceof Uint8Array) || typeof note['atMs'] !== 'number') return null
  return { state: note['state'], mark: note['mark'], atMs: note['atMs'] }
}

/** Readies a plan for another phone. Changes only, where asked for and where there was an earlier hand-over. */
export async function offerHandOver(
  planId: string,
  chosen: Private,
  changesOnly: boolean,
): Promise<Result<HandOverOffer, FileProblem>> {
  const made = await keeper()
  const session = await sessionOf(made, planId)
  if (!session.ok) return bad({ kind: 'damaged', field: 'plan' })
  const [{ packHandOver, toFragment }, { framesOf }, { writeChangesFile }] = await Promise.all([
    import('../../device/sharing/hand-over.ts'),
    import('../../device/sharing/frames.ts'),
    documents(),
  ])
  const document = session.value.document()
  const last = await lastHandOver(planId)
  const since = changesOnly ? last?.state : undefined
  const { doc } = documentFrom([document])
  const [state, mark] = [stateOf(doc), markOf(doc)]
  doc.destroy()
  const bytes = packHandOver({ planId, document, chosen, ...(since && { since }) })
  // Pictures of receipts go with the whole plan only.
  const isChangesFile = since !== undefined && !chosen.receipts
  const files = isChangesFile ? [writeChangesFile('', bytes)] : await exportFiles(planId, chosen)
  return good({
    sizeBytes: bytes.length,
    fileBytes: new Blob(files.map(({ text }) => text)).size,
    isWhole: since === undefined,
    isNothing: since !== undefined && last?.mark === mark,
    lastMs: last?.atMs ?? null,
    fragment: toFragment(bytes),
    changesFile: isChangesFile ? (name) => writeChangesFile(name, bytes) : null,
    frames: framesOf(bytes),
    arrived: async () => {
      await made.shelf.putNote(noteOf(planId), { state, mark, atMs: Date.now() })
    },
  })
}

/** Takes what another phone handed over, from codes or a link: joins it with the plan of the same identity, or makes that plan. */
export async function takeHandOver(bytes: Uint8Array): Promise<Result<string, FileProblem>> {
  const { unpackHandOver } = await import('../../device/sharing/hand-over.ts')
  const read = unpackHandOver(bytes)
  if (!read.ok) return read
  const { planId, document, isWhole } = read.value
  if (!isWhole) return takeDocument(planId, document)
  const doc = documentFromOutside(document)
  if (!doc.ok) return bad({ kind: 'damaged', field: 'code' })
  const plan = readPlan(doc.value)
  const whole = encodeDocument(doc.value)
  doc.value.destroy()
  if (plan.ok)
    return plan.value.id === planId ? takeDocument(planId, whole, plan.value) : bad({ kind: 'damaged', field: 'id' })
  const [problem] = plan.problems
  return bad(problem?.kind === 'newer' ? problem : { kind: 'damaged', field: 'code' })
}

/** What a link brings, to be shown before it is taken. */
export interface LinkBrings {
  /** The plan's name; null where only changes come. */
  readonly name: string | null
  readonly sizeBytes: number
  readonly isWhole: boolean
  readonly isHere: boolean
}

/** Looks into the part of a link after #, and changes nothing. */
export async function lookAtLink(fragment: string): Promise<Result<LinkBrings, FileProblem>> {
  const { fromFragment, unpackHandOver } = await import('../../device/sharing/hand-over.ts')
  const bytes = fromFragment(fragment)
  const read = bytes === null ? bad({ kind: 'not-ours' } as const) : unpackHandOver(bytes)
  if (!read.ok) return read
  const { planId, document, isWhole } = read.value
  const doc = documentFromOutside(document)
  const plan = doc.ok && isWhole ? readPlan(doc.value) : null
  const name = plan?.ok === true ? plan.value.name : null
  const isKnown = await isHere(planId)
  // Said at once, and not only when they are taken.
  if (!isWhole && !isKnown) return bad({ kind: 'gap' })
  return good({ name, sizeBytes: bytes?.length ?? 0, isWhole, isHere: isKnown })
}

/** Takes the part of a link after #. */
export async function takeLink(fragment: string): Promise<Result<string, FileProblem>> {
  const { fromFragment } = await import('../../device/sharing/hand-over.ts')
  const bytes = fromFragment(fragment)
  return bytes === null ? bad({ kind: 'not-ours' }) : takeHandOver(bytes)
}

/** Sends a link by another app, or puts it where it can be pasted from. */
export async function sendLink(name: string, url: string): Promise<'shared' | 'copied' | 'cancelled' | 'failed'> {
  const { shareText } = await import('../../device/sharing/deliver.ts')
  return shareText(name, url)
}

/** What a screen needs to show codes and to read them; loaded when first asked for. */
export async function codeTools() {
  const [{ codeOf, codeReader }, { collectFrames }, { openCamera, closeCamera, pixelsOf, pixelsOfPhoto }] =
    await Promise.all([
      import('../../device/sharing/codes.ts'),
      import('../../device/sharing/frames.ts'),
      import('../../device/sharing/camera.ts'),
    ])
  return { codeOf, codeReader, collectFrames, openCamera, closeCamera, pixelsOf, pixelsOfPhoto }
}
