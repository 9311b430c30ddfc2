import { useStore } from 'zustand'
import type { AppState } from './app-state.ts'
import { store } from './store.ts'

/** A part of the state, followed. */
export const useApp = <T>(select: (state: AppState) => T): T => useStore(store, select)
