/** Made by .ci/words-plugin.ts: all messages of one language, fetched when it is asked for. */
declare module 'virtual:words' {
  import type { Messages } from '@lingui/core'
  export const readWords: (language: string) => Promise<Messages>
}
