import { execFile } from 'node:child_process'
import { mkdtemp, rm } from 'node:fs/promises'
import os from 'node:os'
import path from 'node:path'
import { promisify } from 'node:util'
import type { TestProject } from 'vitest/node'

declare module 'vitest' {
  interface ProvidedContext {
    /** The app, built twice: two versions, told apart by `data-build` on the page's root, `a` and `b`. */
    appA: string
    appB: string
    /** A bare page around `src/device/offline`, built twice likewise: `update-page/main.ts` says what it is for. */
    updateA: string
    updateB: string
  }
}

const run = promisify(execFile)
const root = path.resolve(import.meta.dirname, '../..')

/** Builds in a child process: inside Vitest NODE_ENV is "test", which would bundle React's development build. */
async function buildAs(id: string, outDir: string, pageDir: string): Promise<string> {
  const vite = ['node_modules/vite/bin/vite.js', 'build', pageDir, '--config', 'vite.config.ts', '--logLevel', 'warn']
  await run(process.execPath, [...vite, '--outDir', outDir, '--emptyOutDir'], {
    cwd: root,
    env: { ...process.env, NODE_ENV: 'production', BUILD_ID: id, VITEST: '' },
  })
  return outDir
}

export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const work = await mkdtemp(path.join(os.tmpdir(), 'kilnwright-'))
  const [appA, appB] = await Promise.all(['a', 'b'].map((id) => buildAs(id, path.join(work, `app-${id}`), 'src')))
  const page = 'tests/browser/update-page'
  const [updateA, updateB] = await Promise.all(
    ['a', 'b'].map((id) => buildAs(id, path.join(work, `update-${id}`), page)),
  )
  for (const [name, dir] of Object.entries({ appA, appB, updateA, updateB })) {
    if (dir !== undefined) project.provide(name as 'appA', dir)
  }
  return () => rm(work, { recursive: true })
}
