import { inflateSync } from 'fflate'

/** A file that was deflated when the app was built, from the phone's own store. */
export async function packedBytes(url: string): Promise<Uint8Array> {
  const answer = await fetch(url)
  if (!answer.ok) throw new Error(`${url}: ${String(answer.status)}`)
  return inflateSync(new Uint8Array(await answer.arrayBuffer()))
}
