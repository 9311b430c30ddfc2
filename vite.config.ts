import os from 'node:os'
import path from 'node:path'
import react from '@vitejs/plugin-react'
import type { Plugin } from 'vite'
import { defineConfig } from 'vitest/config'
import { LongestFirst } from './.ci/longest-first.ts'
import { packed } from './.ci/packed-plugin.ts'
import { serviceWorker } from './.ci/service-worker-plugin.ts'
import { words } from './.ci/words-plugin.ts'
import { workerChunks } from './.ci/worker-chunk-plugin.ts'

const here = import.meta.dirname

/** Chunks that people and tests look for by name. */
const NAMED = new Set(['vendor', 'zod', 'documents', 'over-network', 'office', 'pipe-worker', 'work-out', 'PlanHere'])

/** Two files at a time even on two cores: a browser test waits as much as it works. No more than four, each with a browser of its own. */
const WORKERS = Math.min(4, Math.max(2, os.availableParallelism() - 1))

/** The development server needs inline scripts, which the page's policy forbids; the built page keeps its policy. */
const openPolicy: Plugin = {
  name: 'open-policy-while-developing',
  apply: 'serve',
  transformIndexHtml: (html) => html.replace(/<meta\s+http-equiv="Content-Security-Policy"[^>]*>/, ''),
}

export default defineConfig({
  root: path.join(here, 'src'),
  publicDir: path.join(here, 'public'),
  base: './',
  plugins: [
    react(),
    words(),
    packed(),
    workerChunks(),
    serviceWorker(path.join(here, 'src/device/offline/worker/worker.ts')),
    openPolicy,
  ],
  define: { __BUILD__: JSON.stringify(process.env['BUILD_ID'] ?? process.env['npm_package_version'] ?? 'dev') },
  build: {
    outDir: path.join(here, 'dist'),
    emptyOutDir: true,
    target: ['chrome109', 'safari15.4', 'firefox115'], // tests/browser/floor.test.ts holds the built files against them
    sourcemap: false,
    rolldownOptions: {
      // A vendor chunk keeps its name from build to build, so that an update downloads only what changed.
      output: {
        // A thousand imports name other chunks: without their own names that is 10 kB less to keep.
        chunkFileNames: ({ name }) => (NAMED.has(name) ? 'assets/[name]-[hash].js' : 'assets/[hash].js'),
        assetFileNames: ({ names: [name = ''] }) =>
          name.endsWith('.css') ? 'assets/[hash][extname]' : 'assets/[name]-[hash][extname]',
        codeSplitting: {
          groups: [
            {
              name: 'vendor',
              test: /node_modules[\\/](react|react-dom|scheduler|zustand|idb|@lingui|workbox-window|workbox-core)[\\/]/,
            },
            // Apart from the page's libraries: the worker needs it too.
            { name: 'zod', test: /node_modules[\\/]zod[\\/]/ },
            { name: 'documents', test: /node_modules[\\/](yjs|lib0|y-protocols)[\\/]/, priority: 2 },
            { name: 'over-network', test: /node_modules[\\/]@hocuspocus[\\/]/, priority: 1 },
          ],
        },
      },
    },
  },
  server: { fs: { allow: [here] } },
  preview: { host: '127.0.0.1', port: 4173 },
  test: {
    root: here,
    reporters: ['default', './.ci/closing-line.ts'],
    maxWorkers: WORKERS,
    sequence: { sequencer: LongestFirst },
    projects: [
      {
        extends: true,
        test: {
          name: 'core',
          root: here,
          environment: 'node',
          isolate: false,
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', 'tests/bench/**'],
          // Laws try many plans, and the machine may be busy.
          testTimeout: 60_000,
          setupFiles: ['./tests/fixed-seed.ts'],
        },
      },
      {
        extends: true,
        test: {
          name: 'parts',
          root: here,
          environment: 'jsdom',
          isolate: false,
          include: ['tests/**/*.test.tsx'],
          setupFiles: ['./tests/fixed-seed.ts', './tests/setup.ts'],
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          root: here,
          environment: 'node',
          include: ['tests/browser/**/*.test.ts'],
          isolate: false,
          testTimeout: 60_000,
          hookTimeout: 90_000,
          globalSetup: ['./tests/browser/build.ts'],
        },
      },
    ],
  },
})
