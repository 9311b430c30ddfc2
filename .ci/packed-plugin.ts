import { readFileSync } from 'node:fs'
import path from 'node:path'
import { deflateRawSync } from 'node:zlib'
import type { Plugin, ResolvedConfig } from 'vite'
import { keepPacked } from './kept-packed.ts'

const ASKED = '?packed'
const opener = path.resolve(import.meta.dirname, '../src/device/offline/packed-bytes.ts')

/** `import { open } from './face.ttf?packed'`: a file that the phone keeps deflated, and whose bytes `open()` gives when they are needed. */
export function packed(): Plugin {
  let config: ResolvedConfig
  return {
    name: 'packed-files',
    enforce: 'pre',
    configResolved(resolved) {
      config = resolved
    },
    load(id) {
      if (!id.endsWith(ASKED)) return null
      const file = id.slice(0, -ASKED.length)
      if ((process.env['VITEST'] ?? '') !== '')
        return `import { readFileSync } from 'node:fs'\nexport const open = async () => new Uint8Array(readFileSync(${JSON.stringify(file)}))`
      if (config.command !== 'build')
        return `import url from ${JSON.stringify(`${file}?url`)}\nexport const open = async () => new Uint8Array(await (await fetch(url)).arrayBuffer())`
      const bytes = deflateRawSync(readFileSync(file), { level: 9, memLevel: 9 })
      const kept = keepPacked(path.parse(file).name, bytes)
      return [
        `import url from ${JSON.stringify(`${kept}?url&no-inline`)}`,
        `import { packedBytes } from ${JSON.stringify(opener)}`,
        `export const open = () => packedBytes(url)`,
      ].join('\n')
    },
  }
}
