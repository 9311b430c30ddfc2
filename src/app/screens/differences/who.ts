import type { Words } from '../../words/words.ts'

/** Who changed something, as far as the document knows. */
export function whoText(author: { readonly phone: string } | null, { say }: Words): string {
  if (author === null) return say('differences.nobody')
  return author.phone === '' ? say('history.unnamed') : author.phone
}
