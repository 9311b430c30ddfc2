import type { Plugin } from 'vite'

const ASKED = '?chunk'
const OURS = '\0chunk:'

/**
 * `import { address } from './search-worker.ts?chunk'` gives the address of a module worker that is one more chunk of the page's own build: what both
 * need is on the phone once, not a second time inside the worker.
 */
export function workerChunks(): Plugin {
  let isBuild = false
  return {
    name: 'worker-chunks',
    enforce: 'pre',
    configResolved({ command }) {
      isBuild = command === 'build'
    },
    async resolveId(source, importer) {
      if (!source.endsWith(ASKED)) return null
      const found = await this.resolve(source.slice(0, -ASKED.length), importer)
      return found === null ? null : `${OURS}${found.id}`
    },
    load(id) {
      if (!id.startsWith(OURS)) return null
      const file = id.slice(OURS.length)
      if (!isBuild) return `export const address = ${JSON.stringify(`/@fs${file}`)}`
      return `export const address = import.meta.ROLLUP_FILE_URL_${this.emitFile({ type: 'chunk', id: file })}`
    },
  }
}
