import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, renameSync, writeFileSync } from 'node:fs'
import path from 'node:path'

const folder = path.resolve(import.meta.dirname, '../node_modules/.tmp/packed')

/** A file of the build's own making, named after what is in it. Written beside and moved into place: two builds at once never read half of one. */
export function keepPacked(name: string, bytes: Uint8Array): string {
  mkdirSync(folder, { recursive: true })
  const hash = createHash('sha256').update(bytes).digest('hex').slice(0, 8)
  const file = path.join(folder, `${name}-${hash}.bin`)
  if (!existsSync(file)) {
    const draft = `${file}.${String(process.pid)}`
    writeFileSync(draft, bytes)
    renameSync(draft, file)
  }
  return file
}
