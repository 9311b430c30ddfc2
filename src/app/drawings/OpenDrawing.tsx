import type { ViewKey } from '../../core/documents/drawings/views.ts'
import { useWords } from '../words/use-words.tsx'
import './viewer.css'
import { viewName } from './view-name.ts'

/** Lies over a drawing in its frame: a tap opens the drawing over the whole screen. */
export function OpenDrawing({ view, onOpen }: { readonly view: ViewKey; readonly onOpen: () => void }) {
  const words = useWords()
  return (
    <button
      type="button"
      className="draw-open"
      aria-label={words.named('drawing.open', { name: viewName(view, words) })}
      onClick={onOpen}
    />
  )
}
