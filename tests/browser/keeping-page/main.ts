// A bare page around `src/app/state`: the real store, database and tabs, driven by a test instead of a thumb.
import * as actions from '../../../src/app/state/actions.ts'
import * as files from '../../../src/app/state/file-actions.ts'
import * as handOver from '../../../src/app/state/hand-over-actions.ts'
import { store } from '../../../src/app/state/store.ts'

const keeping = { ...actions, ...files, ...handOver, store }
export type Keeping = typeof keeping

declare global {
  interface Window {
    keeping: Keeping
  }
}
window.keeping = keeping
await actions.startApp()
performance.mark('plans listed')
