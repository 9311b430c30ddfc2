import { describe, expect, it } from 'vitest'
import { compacted } from '../../../src/device/database/compact.ts'
import { memoryShelf } from '../../../src/device/database/memory-shelf.ts'
import { beginSession } from '../../../src/device/database/plan-session.ts'
import type { TabMessage } from '../../../src/device/database/tabs.ts'
import { planOf } from '../plans.ts'

describe('a document of one decision changed hundreds of times', () => {
  it('does not keep them: what was overwritten goes when stored changes are joined', { timeout: 30_000 }, async () => {
    const stored: Uint8Array[] = []
    const tell = (message: TabMessage) => {
      if (message.kind === 'update') stored.push(message.bytes)
    }
    const session = beginSession(planOf(), {
      shelf: memoryShelf(),
      tabs: { tell },
      onChange: () => {},
      phone: () => 'A phone',
    })
    const first = session.document().length
    for (let turn = 0; turn < 400; turn++) {
      session.edit({ ...session.plan(), name: `Name number ${String(turn)}` })
      if (turn % 10 === 0) await session.settled()
    }
    await session.settled()
    const raw = stored.reduce((sum, { length }) => sum + length, 0)
    const one = compacted(stored)?.length ?? NaN
    console.log(
      `400 edits of one field: ${String(first)} bytes at first, ${String(raw)} as stored, ${String(one)} joined`,
    )
    expect(raw - first).toBeGreaterThan(4000)
    expect(one - first).toBeLessThan(200)
    session.end()
  })
})
