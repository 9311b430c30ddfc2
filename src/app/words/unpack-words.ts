import type { Messages } from '@lingui/core'
import { inflateSync } from 'fflate'

async function inflated(url: string): Promise<unknown> {
  const answer = await fetch(url)
  if (!answer.ok) throw new Error(`${url}: ${String(answer.status)}`)
  return JSON.parse(new TextDecoder().decode(inflateSync(new Uint8Array(await answer.arrayBuffer()))))
}

/** Names of messages and, in the same order, what one language says for them: two files of the build, both deflated JSON. */
export async function unpackWords(namesUrl: string, wordsUrl: string): Promise<Messages> {
  const [names, words] = await Promise.all([inflated(namesUrl), inflated(wordsUrl)])
  if (!Array.isArray(names) || !Array.isArray(words) || names.length !== words.length)
    throw new Error('words and names differ')
  return Object.fromEntries(names.map((name, index) => [String(name), words[index] as Messages[string]]))
}
