import type { Notice } from './app-state.ts'
import { store } from './store.ts'

const SHOWN_MS = 10_000
let timer: ReturnType<typeof setTimeout> | undefined

export function clearNotice(): void {
  clearTimeout(timer)
  if (store.getState().notice !== null) store.setState({ notice: null })
}

/** Shows a short message; its way back closes it. */
export function notify(notice: Notice): void {
  clearTimeout(timer)
  const { undo } = notice
  const shown: Notice = undo
    ? {
        ...notice,
        undo: () => {
          clearNotice()
          undo()
        },
      }
    : notice
  store.setState({ notice: shown })
  timer = setTimeout(clearNotice, SHOWN_MS)
}
