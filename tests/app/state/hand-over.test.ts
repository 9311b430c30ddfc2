import { describe, expect, it, vi } from 'vitest'
import { createPlan, openPlan, setField, startApp, undo } from '../../../src/app/state/actions.ts'
import { chooseAnswer } from '../../../src/app/state/difference-actions.ts'
import { exportPlan, openExample, openFile } from '../../../src/app/state/file-actions.ts'
import { codeTools, offerHandOver, takeHandOver, takeLink } from '../../../src/app/state/hand-over-actions.ts'
import { planHistory, restoreCopy } from '../../../src/app/state/history-actions.ts'
import { eraseEverything } from '../../../src/app/state/phone-actions.ts'
import { canShareFiles, sharePlan } from '../../../src/app/state/save-plan-file.ts'
import { store } from '../../../src/app/state/store.ts'
import { offerOf } from '../../device/plans.ts'
import { FIRST } from './first-answers.ts'
import { open, phonesInNode, saved, takeUp } from './phones.ts'

const ALL = { names: true, receipts: true }
const NONE = { names: false, receipts: false }
phonesInNode()

const offer = async (changesOnly = false, chosen = ALL) => {
  const offered = await offerHandOver(open().id, chosen, changesOnly)
  if (!offered.ok) throw new Error('nothing offered')
  return offered.value
}
/** What a camera on the other phone makes of the codes on this one, one in three missed. */
const filmed = async (codes: { readonly text: (frame: number) => string } | null): Promise<Uint8Array> => {
  const collector = (await codeTools()).collectFrames()
  for (let frame = 0; frame < 500; frame++) {
    if (frame % 3 === 1) continue
    const bytes = collector.take(codes?.text(frame) ?? '')?.bytes
    if (bytes) return bytes
  }
  throw new Error('never whole')
}

describe('three phones, no network', () => {
  it('hand the plan round by codes, link and file, and end with everybody’s work', async () => {
    await takeUp('Officer')
    await createPlan(FIRST)
    for (let item = 0; item < 25; item++)
      setField(`offers.o${String(item)}`, offerOf(`item-${String(item)}`, 100 + item))
    await saved()
    const { id } = open()
    const toMason = await filmed((await offer()).frames)
    const toTreasurer = (await offer()).fragment ?? ''

    await takeUp('Mason')
    expect(await takeHandOver(toMason)).toEqual({ ok: true, value: id })
    setField('walls.samples', [[0.451, 0.149, 0.226]])
    await saved()
    const fromMason = await filmed((await offer()).frames)

    await takeUp('Treasurer')
    expect(await takeLink(toTreasurer)).toEqual({ ok: true, value: id })
    setField('offers.o3.priceMinor', 77)
    await saved()
    const fromTreasurer = await exportPlan(id)

    await takeUp('Officer')
    await openPlan(id)
    setField('name', 'Renamed meanwhile')
    expect(await takeHandOver(fromMason)).toEqual({ ok: true, value: id })
    expect(await openFile(new Blob([fromTreasurer.text]))).toEqual({ ok: true, value: id })
    expect(store.getState().differences).toEqual([])
    expect(open().plan).toMatchObject({
      name: 'Renamed meanwhile',
      walls: { samples: [[0.451, 0.149, 0.226]] },
      offers: { o3: { priceMinor: 77 }, o24: { priceMinor: 124 } },
    })
  })

  it('hand over only what changed since, and a phone that lacks what it builds on asks for the whole', async () => {
    await takeUp('Officer')
    const id = await createPlan(FIRST)
    await saved()
    const first = await offer()
    await first.arrived()
    const whole = await filmed(first.frames)
    setField('ground.soil', 'laterite')
    const changes = await offer(true)
    expect([first.isWhole, changes.isWhole]).toEqual([true, false])
    expect(changes.sizeBytes).toBeLessThan(200)
    const bytes = await filmed(changes.frames)

    await takeUp('Mason')
    expect(await takeHandOver(bytes)).toEqual({ ok: false, problems: [{ kind: 'gap' }] })
    expect(store.getState().rows).toEqual([])
    await takeHandOver(whole)
    expect(await takeHandOver(bytes)).toEqual({ ok: true, value: id })
    expect(open().plan.ground.soil).toBe('laterite')
  })

  it('hand the changes over as a file too, which joins with the plan it belongs to and is refused without it', async () => {
    await takeUp('Officer')
    const id = await createPlan(FIRST)
    await saved()
    const first = await offer()
    expect(first.changesFile).toBeNull()
    await first.arrived()
    const whole = await filmed(first.frames)
    setField('ground.soil', 'laterite')
    setField('members.m1', { name: 'Abena (example)', weight: 1 })
    const changes = await offer(true, NONE)
    const file = changes.changesFile?.('By the landing, changes')
    expect(file?.fileName).toBe('By-the-landing-changes.kilnwright.json')
    expect(changes.fileBytes).toBe(file?.text.length)
    expect(changes.isNothing).toBe(false)
    await changes.arrived()
    expect((await offer(true, NONE)).isNothing).toBe(true)
    expect((await offer()).isNothing).toBe(false)
    expect(changes.fileBytes).toBeLessThan(first.fileBytes / 10)
    const carried = new Blob([file?.text ?? ''])

    await takeUp('Mason')
    expect(await openFile(carried)).toEqual({ ok: false, problems: [{ kind: 'gap' }] })
    expect(store.getState().rows).toEqual([])
    await takeHandOver(whole)
    setField('name', 'The mason’s name')
    expect(await openFile(carried)).toEqual({ ok: true, value: id })
    expect(open().plan).toMatchObject({ name: 'The mason’s name', ground: { soil: 'laterite' } })
    expect(open().plan.members).toEqual({ m1: { name: '', weight: 1 } })
    expect(await openFile(new Blob(['{"format":"kilnwright-changes","version":9,"handOver":""}']))).toMatchObject({
      problems: [{ kind: 'newer', theirVersion: 9 }],
    })
    expect(await openFile(new Blob([(file?.text ?? '').replace(/.{8}"\}/, '"}')]))).toMatchObject({
      problems: [{ kind: 'damaged' }],
    })
  })

  it('show a decision that was answered twice, until someone chooses; undo takes the choice back', async () => {
    await takeUp('Officer')
    const id = await createPlan(FIRST)
    await saved()
    const start = await filmed((await offer()).frames)
    await takeUp('Treasurer')
    await takeHandOver(start)
    setField('ground.soil', 'sand-dense')
    const fromTreasurer = await filmed((await offer()).frames)
    await takeUp('Officer')
    await openPlan(id)
    setField('ground.soil', 'laterite')
    await takeHandOver(fromTreasurer)
    const both = {
      path: 'ground.soil',
      mine: { value: 'laterite', author: { phone: 'Officer' } },
      theirs: { value: 'sand-dense', author: { phone: 'Treasurer' } },
    }
    expect(store.getState().differences).toMatchObject([both])
    await saved()
    await takeUp('Officer')
    await openPlan(id)
    await vi.waitUntil(() => store.getState().differences.length === 1)
    const { kept } = store.getState().differences[0] ?? { kept: 'mine' }
    await chooseAnswer('ground.soil', kept === 'mine' ? 'theirs' : 'mine')
    expect(open().plan.ground.soil).toBe(kept === 'mine' ? 'sand-dense' : 'laterite')
    expect(store.getState().differences).toEqual([])
    undo()
    expect(open().plan.ground.soil).toBe(kept === 'mine' ? 'laterite' : 'sand-dense')
  })

  it('bring an example back and forth although each opened it for itself', async () => {
    await takeUp('Officer')
    const id = await openExample('two-chambers')
    setField('chambers.clearSideM', 0.8)
    const fromOfficer = await filmed((await offer()).frames)
    await takeUp('Mason')
    expect(await openExample('two-chambers')).toBe(id)
    setField('ground.soil', 'laterite')
    await takeHandOver(fromOfficer)
    expect(open().plan).toMatchObject({ chambers: { clearSideM: 0.8 }, ground: { soil: 'laterite' } })
    expect(store.getState().differences).toEqual([])
  })

  it('keep names and receipts at home unless they are chosen', async () => {
    await takeUp('Officer')
    const id = await createPlan(FIRST)
    setField('members.m1', { name: 'Abena (example)', weight: 1 })
    const bytes = await filmed((await offer(false, NONE)).frames)
    expect((await exportPlan(id, NONE)).text).not.toContain('Abena')
    expect((await exportPlan(id)).text).toContain('Abena')
    await saved()
    await takeUp('Mason')
    await takeHandOver(bytes)
    expect(open().plan.members).toEqual({ m1: { name: '', weight: 1 } })
    setField('members.m1.weight', 2)
    const back = await filmed((await offer(false, NONE)).frames)
    await takeUp('Officer')
    await takeHandOver(back)
    expect(open().plan.members).toEqual({ m1: { name: 'Abena (example)', weight: 2 } })
  })

  it('go to another app as a file with what was chosen; only a file that left counts as kept elsewhere', async () => {
    const handed: File[] = []
    let answer: 'shared' | 'cancelled' = 'cancelled'
    vi.stubGlobal('navigator', {
      canShare: ({ files }: { readonly files: readonly File[] }) => files.length > 0,
      share: ({ files }: { readonly files: readonly File[] }) => {
        handed.push(...files)
        return answer === 'shared' ? Promise.resolve() : Promise.reject(new DOMException('', 'AbortError'))
      },
    })
    await takeUp('Officer')
    const id = await createPlan(FIRST)
    setField('members.m1', { name: 'Abena (example)', weight: 1 })
    expect(canShareFiles()).toBe(true)
    expect(await sharePlan(id, NONE)).toBe('cancelled')
    expect(store.getState().backedUpAtMs).toBeNull()
    answer = 'shared'
    expect(await sharePlan(id, NONE)).toBe('shared')
    expect(store.getState().backedUpAtMs).toBeGreaterThan(Date.now() - 60_000)
    const [file] = handed
    expect(file?.name).toBe('By-the-landing.kilnwright.json')
    expect(await file?.text()).not.toContain('Abena')
    await saved()
    await takeUp('Officer')
    expect(store.getState().backedUpAtMs).toBeGreaterThan(Date.now() - 60_000)
  })

  it('pass over what is no hand-over, and change nothing', async () => {
    await takeUp('Officer')
    await createPlan(FIRST)
    const before = JSON.stringify(store.getState())
    expect(await takeLink('#/plan/x')).toEqual({ ok: false, problems: [{ kind: 'not-ours' }] })
    expect(await takeHandOver(Uint8Array.of(1, 2, 3, 4, 5, 6, 7, 8))).toMatchObject({ problems: [{ kind: 'damaged' }] })
    expect(JSON.stringify(store.getState())).toBe(before)
  })
})

describe('what was', () => {
  it('can be looked up and brought back, as a new change', async () => {
    await takeUp('Officer')
    const id = await createPlan(FIRST)
    await saved()
    const away = await filmed((await offer()).frames)
    await takeUp('Treasurer')
    await takeHandOver(away)
    setField('ground.soil', 'sand-dense')
    const fromTreasurer = await filmed((await offer()).frames)
    await takeUp('Officer')
    await takeHandOver(fromTreasurer)
    const { steps, copies } = await planHistory(id)
    expect(copies).toMatchObject([{ why: 'before-merge' }])
    expect(steps).toMatchObject([
      { changes: [{ path: 'ground.soil', before: 'clay-firm', after: 'sand-dense', author: { phone: 'Treasurer' } }] },
    ])
    await restoreCopy(id, copies[0]?.atMs ?? 0, 'today')
    expect(open().plan.ground.soil).toBe('clay-firm')
    undo()
    expect(open().plan.ground.soil).toBe('sand-dense')
  })

  it('is gone after everything was erased', async () => {
    await takeUp('Officer')
    await createPlan(FIRST)
    await saved()
    vi.stubGlobal('localStorage', { clear: () => {} })
    expect(await eraseEverything()).toEqual({ plans: 1, copies: 0, files: 0 })
    expect(store.getState()).toMatchObject({ rows: [], erased: { plans: 1 } })
    await startApp()
    expect(store.getState()).toMatchObject({ rows: [], phoneName: '' })
  })
})
