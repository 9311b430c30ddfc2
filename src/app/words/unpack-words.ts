import type { Messages } from '@lingui/core'
import { inflateSync } from 'fflate'
import { readMessages, readNames } from './read-packed.ts'

async function inflated(url: string): Promise<string> {
  const answer = await fetch(url)
  if (!answer.ok) throw new Error(`${url}: ${String(answer.status)}`)
  return new TextDecoder().decode(inflateSync(new Uint8Array(await answer.arrayBuffer())))
}

/** Names of messages and, in the same order, what one language says for them: two files of the build, both deflated. */
export async function unpackWords(namesUrl: string, wordsUrl: string): Promise<Messages> {
  const [names, words] = await Promise.all([inflated(namesUrl).then(readNames), inflated(wordsUrl).then(readMessages)])
  if (names.length !== words.length) throw new Error('words and names differ')
  return Object.fromEntries(names.map((name, index) => [name, words[index] as Messages[string]]))
}
