import path from 'node:path'
import { defineConfig } from 'vitest/config'
import { packed } from '../../.ci/packed-plugin.ts'
import { mutating } from './work.ts'

const root = path.resolve(import.meta.dirname, '../..')
const { MUTANTS_ROOM = 'costs', MUTANTS_SAMPLE = '100', MUTANTS_SEED = '1', MUTANTS_LIST = '' } = process.env

// The room's own tests come first: they are the quickest to notice.
export default defineConfig({
  root,
  plugins: [packed(), mutating(MUTANTS_ROOM, Number(MUTANTS_SAMPLE), Number(MUTANTS_SEED), MUTANTS_LIST)],
  define: { __BUILD__: '"mutants"' },
  test: {
    environment: 'node',
    isolate: false,
    fileParallelism: false,
    testTimeout: 3_600_000,
    runner: './tests/mutation/runner.ts',
    setupFiles: ['./tests/mutation/awake.ts', './tests/fixed-seed.ts'],
    include: ['tests/{core,laws,reference}/**/*.test.ts'],
    exclude: ['tests/reference/{register,unsourced}.test.ts', 'tests/core/plan/**', 'tests/core/choosing/**'],
    sequence: { sequencer: (await import('./order-of-files.ts')).NearestFirst },
  },
})
