import { bad, good, type Result } from '../../core/basics/result.ts'
import { documentFrom, documentFromOutside, readPlan } from '../../device/database/plan-document.ts'
import { encodeDocument, stateOf } from '../../device/database/document-bytes.ts'
import type { FileProblem } from '../../device/sharing/plan-file.ts'
import type { Frames } from '../../device/sharing/frames.ts'
import type { Private } from '../../device/sharing/chosen.ts'
import { keeper, sessionOf } from './keeper.ts'
import { takeDocument } from './take-document.ts'

/** A plan, or what changed in it since the last hand-over, ready to go by any way. */
export interface HandOverOffer {
  readonly sizeBytes: number
  /** False where only the changes go. */
  readonly isWhole: boolean
  /** The part of a link after #; null where it is too long. */
  readonly fragment: string | null
  /** The codes to show in turn; null where they would be too many. */
  readonly frames: Frames | null
  /** To be called when the other phone has it: the next hand-over of changes begins here. */
  readonly arrived: () => Promise<void>
}

const noteOf = (planId: string): string => `handed-over:${planId}`

/** Readies a plan for another phone. Changes only, where asked for and where there was an earlier hand-over. */
export async function offerHandOver(
  planId: string,
  chosen: Private,
  changesOnly: boolean,
): Promise<Result<HandOverOffer, FileProblem>> {
  const made = await keeper()
  const session = await sessionOf(made, planId)
  if (!session.ok) return bad({ kind: 'damaged', field: 'plan' })
  const [{ packHandOver, toFragment }, { framesOf }] = await Promise.all([
    import('../../device/sharing/hand-over.ts'),
    import('../../device/sharing/frames.ts'),
  ])
  const document = session.value.document()
  const last = changesOnly ? await made.shelf.note(noteOf(planId)) : undefined
  const since = last instanceof Uint8Array ? last : undefined
  const bytes = packHandOver({ planId, document, chosen, ...(since && { since }) })
  return good({
    sizeBytes: bytes.length,
    isWhole: since === undefined,
    fragment: toFragment(bytes),
    frames: framesOf(bytes),
    arrived: async () => {
      const { doc } = documentFrom([document])
      await made.shelf.putNote(noteOf(planId), stateOf(doc))
      doc.destroy()
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

/** Takes the part of a link after #. */
export async function takeLink(fragment: string): Promise<Result<string, FileProblem>> {
  const { fromFragment } = await import('../../device/sharing/hand-over.ts')
  const bytes = fromFragment(fragment)
  return bytes === null ? bad({ kind: 'not-ours' }) : takeHandOver(bytes)
}

/** What a screen needs to show codes and to read them; loaded when first asked for. */
export async function codeTools() {
  const [{ codeOf, codeReader }, { collectFrames }] = await Promise.all([
    import('../../device/sharing/codes.ts'),
    import('../../device/sharing/frames.ts'),
  ])
  return { codeOf, codeReader, collectFrames }
}
