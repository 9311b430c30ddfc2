import { describe, expect, it, vi } from 'vitest'
import { createPlan, duplicatePlan, openPlan, setField } from '../../../src/app/state/actions.ts'
import { exportFiles, openFile } from '../../../src/app/state/file-actions.ts'
import { offerHandOver } from '../../../src/app/state/hand-over-actions.ts'
import { keeper } from '../../../src/app/state/keeper.ts'
import { eraseEverything } from '../../../src/app/state/phone-actions.ts'
import { dropUnnamedReceipts, receiptLoad, receiptPicture } from '../../../src/app/state/receipt-actions.ts'
import { store } from '../../../src/app/state/store.ts'
import { storedReceipt } from '../../../src/device/receipts/receipt-key.ts'
import { spendingOf } from '../../device/plans.ts'
import { jpegOf, WEBP } from '../../device/receipts/pictures.ts'
import { FIRST } from './first-answers.ts'
import { open, phonesInNode, saved, takeUp } from './phones.ts'

phonesInNode()

const ALL = { names: true, receipts: true }
const shelf = async () => (await keeper()).shelf
/** A purchase with a photo, as the screen writes it: first the picture, then the record that names it. */
async function recordWithPhoto(record: string, bytes: Uint8Array = WEBP.lossy, atMs = Date.now()): Promise<void> {
  await (await shelf()).putReceipt(storedReceipt(open().id, `photo-of-${record}`, bytes, atMs))
  setField(`spending.${record}`, spendingOf({ receipt: `photo-of-${record}` }))
  await saved()
}
const bytesOf = async (picture: Blob | null) => picture && new Uint8Array(await picture.arrayBuffer())

describe('photos of receipts', () => {
  it('go along in a file when chosen, and stand beside the plan on the other phone', async () => {
    await takeUp('Treasurer')
    const id = await createPlan(FIRST)
    await recordWithPhoto('r1', WEBP.lossy)
    await recordWithPhoto('r2', jpegOf(900, 1200))
    expect((await receiptLoad(id)).count).toBe(2)
    const [without] = await exportFiles(id, { names: true, receipts: false })
    const [withThem] = await exportFiles(id, ALL)
    const added = (withThem?.text.length ?? 0) - (without?.text.length ?? 0)
    const { sizeBytes } = await receiptLoad(id)
    expect(added).toBeGreaterThanOrEqual(sizeBytes)
    expect(added).toBeLessThan(sizeBytes + 300)

    await takeUp('Officer')
    expect(await openFile(new Blob([without?.text ?? '']))).toEqual({ ok: true, value: id })
    expect(open().plan.spending['r1']?.receipt).toBeNull()
    expect(await openFile(new Blob([withThem?.text ?? '']))).toEqual({ ok: true, value: id })
    expect(store.getState().notice?.key).toBe('keeping.merged')
    expect(open().plan.spending['r1']?.receipt).toBe('photo-of-r1')
    const first = await receiptPicture(id, 'photo-of-r1')
    expect([first?.type, await bytesOf(first)]).toEqual(['image/webp', WEBP.lossy])
    expect((await receiptPicture(id, 'photo-of-r2'))?.type).toBe('image/jpeg')
    expect(await receiptPicture(id, 'photo-of-nothing')).toBeNull()
  })

  it('never go by code or link', async () => {
    await takeUp('Treasurer')
    const id = await createPlan(FIRST)
    await recordWithPhoto(
      'r1',
      Uint8Array.from({ length: 90_000 }, (_, at) => jpegOf(9, 9)[at] ?? (at * 7919) % 251),
    )
    const offered = await offerHandOver(id, ALL, false)
    expect(offered).toMatchObject({ ok: true })
    expect(offered.ok && offered.value.sizeBytes).toBeLessThan(5000)
  })

  it('replace none that is here, and what is no picture is left out and said', async () => {
    await takeUp('Treasurer')
    const id = await createPlan(FIRST)
    await recordWithPhoto('r1', WEBP.lossy)
    await recordWithPhoto('r2', WEBP.lossless)
    const [file] = await exportFiles(id)
    const envelope = JSON.parse(file?.text ?? '') as { readonly receipts: readonly { readonly id: string }[] }
    const other = (bytes: Uint8Array) => Buffer.from(bytes).toString('base64')
    const receipts = envelope.receipts.map((one) => ({ ...one, picture: other(WEBP.extended) }))
    expect(await openFile(new Blob([JSON.stringify({ ...envelope, receipts })]))).toMatchObject({ ok: true })
    expect(await bytesOf(await receiptPicture(id, 'photo-of-r1'))).toEqual(WEBP.lossy)

    await takeUp('Officer')
    const [first, second] = receipts
    const bent = [{ ...first, picture: other(jpegOf(9000, 9000)) }, second, { ...second, id: 'x' }]
    expect(await openFile(new Blob([JSON.stringify({ ...envelope, receipts: bent })]))).toEqual({ ok: true, value: id })
    expect(store.getState().notice).toMatchObject({ key: 'keeping.receipts-left-out', args: { count: 2 } })
    expect(Object.keys(open().plan.spending)).toEqual(['r1', 'r2'])
    expect(await receiptPicture(id, 'photo-of-r1')).toBeNull()
    expect(await bytesOf(await receiptPicture(id, 'photo-of-r2'))).toEqual(WEBP.extended)
  })

  it('are counted as left out where the phone is full, and the plan comes all the same', async () => {
    await takeUp('Treasurer')
    const id = await createPlan(FIRST)
    await recordWithPhoto('r1')
    const [file] = await exportFiles(id)
    await takeUp('Officer')
    vi.spyOn(await shelf(), 'putReceipt').mockResolvedValue('full')
    expect(await openFile(new Blob([file?.text ?? '']))).toEqual({ ok: true, value: id })
    expect(store.getState().notice).toMatchObject({ key: 'keeping.receipts-left-out', args: { count: 1 } })
    expect(open().plan.spending['r1']?.paidMinor).toBe(5300)
  })

  it('belong to the copy of a plan as well, and going with one leaves the other’s', async () => {
    await takeUp('Treasurer')
    const id = await createPlan(FIRST)
    await recordWithPhoto('r1')
    const copied = await duplicatePlan(id)
    const copy = copied.ok ? copied.value : ''
    expect(await bytesOf(await receiptPicture(copy, 'photo-of-r1'))).toEqual(WEBP.lossy)
    await (await shelf()).remove([id])
    expect(await receiptPicture(id, 'photo-of-r1')).toBeNull()
    expect(await bytesOf(await receiptPicture(copy, 'photo-of-r1'))).toEqual(WEBP.lossy)
  })

  it('wait a month for an undo once no record names them', async () => {
    await takeUp('Treasurer')
    const id = await createPlan(FIRST)
    const long = Date.now() - 31 * 86_400_000
    await recordWithPhoto('kept', WEBP.lossy, long)
    await recordWithPhoto('gone', WEBP.lossy, long)
    await recordWithPhoto('just-gone')
    setField('spending.gone', undefined)
    setField('spending.just-gone.receipt', null)
    await openPlan(id)
    await dropUnnamedReceipts(open().plan)
    const left = await (await shelf()).receipts(id)
    expect(left.map((one) => one.id).sort()).toEqual([`${id}/photo-of-just-gone`, `${id}/photo-of-kept`])
  })

  it('are gone after everything was erased', async () => {
    await takeUp('Treasurer')
    const id = await createPlan(FIRST)
    await recordWithPhoto('r1')
    vi.stubGlobal('localStorage', { clear: () => {} })
    await eraseEverything()
    await takeUp('Treasurer')
    expect(await receiptPicture(id, 'photo-of-r1')).toBeNull()
    expect(await (await shelf()).receipts(id)).toEqual([])
  })
})
