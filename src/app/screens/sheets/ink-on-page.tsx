import type { ReactElement } from 'react'
import { createRoot } from 'react-dom/client'
import { flushSync } from 'react-dom'
import type { Show } from '../../words/show.ts'
import { WordsProvider } from '../../words/use-words.tsx'

/** Inks drawings as markup in a corner of the page that is never shown. Call `done` when all are inked. */
export function inkOnPage(show: Show): { readonly ink: (drawing: ReactElement) => string; readonly done: () => void } {
  const corner = document.createElement('div')
  const root = createRoot(corner)
  return {
    ink: (drawing) => {
      flushSync(() => {
        root.render(<WordsProvider show={show}>{drawing}</WordsProvider>)
      })
      return corner.innerHTML
    },
    done: () => {
      root.unmount()
    },
  }
}
