import type { ViewKey } from '../../core/documents/drawings/views.ts'
import type { Words } from '../words/words.ts'

/** What a drawing is called in lists and titles. */
export function viewName(view: ViewKey, { named }: Pick<Words, 'named'>): string {
  const numbered = /^(divider|course|board|roll|sheet|setout)-(-?\d+)$/.exec(view)
  if (numbered === null) return named(`drawing.view.${view}`)
  return named(`drawing.view.${numbered[1] ?? ''}`, { number: Number(numbered[2]) })
}
