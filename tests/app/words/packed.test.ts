import { compileMessage } from '@lingui/message-utils/compileMessage'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { packedMessages, packedNames, type Compiled } from '../../../.ci/pack-messages.ts'
import { messagesOf } from '../../../.ci/words-plugin.ts'
import { readMessages, readNames } from '../../../src/app/words/read-packed.ts'

/** What Lingui leaves undefined says nothing, and is not carried. */
const plain = (message: unknown): unknown => JSON.parse(JSON.stringify(message))

describe('words as the phone keeps them', () => {
  it.each(['en', 'fr', 'pt', 'sw', 'ha'])('every message of %s comes back as Lingui compiled it', (language) => {
    const compiled = Object.values(messagesOf(language)).map((text) => compileMessage(text) as Compiled)
    expect(compiled.length).toBeGreaterThan(2000)
    expect(readMessages(packedMessages(compiled))).toEqual(plain(compiled))
  })

  it('a choice within a choice comes back', () => {
    const text = '{n, plural, =0 {none} one {{who, select, a {one # of {x}} other {b}}} other {# and {y}, {z}}} end'
    const compiled = compileMessage(text) as Compiled
    expect(readMessages(packedMessages([compiled]))).toEqual(plain([compiled]))
  })

  it('names come back in their order', () => {
    const names = Object.keys(messagesOf('en')).sort()
    expect(readNames(packedNames(names))).toEqual(names)
    fc.assert(
      fc.property(fc.uniqueArray(fc.stringMatching(/^[a-z.-]{1,90}$/)), (some) => {
        expect(readNames(packedNames(some.sort()))).toEqual(some.length === 0 ? [''] : some)
      }),
    )
  })
})
