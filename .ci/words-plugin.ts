import { compileMessage } from '@lingui/message-utils/compileMessage'
import type { Plugin } from 'vite'

const catalogue = /\/src\/app\/words\/[a-z-]+\/[a-z-]+\.json$/

/** Compiles each ICU message of a catalogue when it is bundled, so that the phone carries no parser. */
export function words(): Plugin {
  return {
    name: 'compile-words',
    enforce: 'pre',
    transform(code, id) {
      if (!catalogue.test(id)) return null
      const messages = JSON.parse(code) as Record<string, string>
      const compiled = Object.fromEntries(Object.entries(messages).map(([key, text]) => [key, compileMessage(text)]))
      return { code: JSON.stringify(compiled), map: null }
    },
  }
}
