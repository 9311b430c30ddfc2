import { bench, describe } from 'vitest'
import { encodeDocument } from '../../src/device/database/document-bytes.ts'
import { documentOf } from '../../src/device/database/plan-document.ts'
import { doAll, phoneWith, phoneWithPlan, yearOf } from '../device/year.ts'

// A year of two phones that never met: a thousand changes each to the same plan.
const officer = phoneWithPlan()
const start = officer.document()
const deeds = yearOf('officer', 1000)
const sizes = [start.length]
for (let from = 0; from < deeds.length; from += 250) {
  doAll(officer, deeds.slice(from, from + 250))
  sizes.push(officer.document().length)
}
const anew = encodeDocument(documentOf(officer.plan())).length
console.log(
  `a document of daily work, bytes at first and after every 250 edits: ${sizes.join(', ')}; ${String(anew)} if the same plan began anew`,
)
const treasurer = phoneWith(start)
doAll(treasurer, yearOf('treasurer', 1000))
const [ours, theirs] = [officer.document(), treasurer.document()]

/** From bytes to the joined plan, as a phone does it: tried on copies, differences looked for, the plan read and checked. */
async function meet(mine: Uint8Array, other: Uint8Array): Promise<void> {
  const session = phoneWith(mine)
  const merged = await session.merge(other)
  session.end()
  if (!merged.ok) throw new Error('not merged')
}

// At most 200 ms for a year's plan, 2,000 changes, median on one core.
describe('two phones meet', () => {
  bench('a plan opened, as the other', () => {
    phoneWith(ours).end()
  })
  bench('a plan of 2,000 changes opened and merged', () => meet(ours, theirs))
  bench('the same met again: nothing new', () => meet(ours, ours))
})
