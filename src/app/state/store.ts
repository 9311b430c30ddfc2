import { createStore } from 'zustand/vanilla'
import type { AppState } from './app-state.ts'

const AT_START: AppState = {
  phase: 'loading',
  storage: 'asking',
  rows: [],
  open: null,
  offline: 'starting',
  notice: null,
  phoneName: '',
  backedUpAtMs: null,
  differences: [],
  erased: null,
  office: null,
}

/** What the screens see. Only the actions of this folder write to it. */
export const store = createStore<AppState>(() => AT_START)
