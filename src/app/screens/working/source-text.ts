import { SOURCES, type SourceId } from '../../../core/sources/sources.ts'
import { say } from '../../words/catalogue.ts'

/** Where a figure comes from, in one line: author, title, year and place, or that it has no published source. */
export function sourceText(id: SourceId): string {
  const source: { kind: string; author?: string; title?: string; year?: number; place?: string } = SOURCES[id]
  const cited = [source.author, source.title, source.year, source.place].filter((part) => part !== undefined).join(', ')
  switch (source.kind) {
    case 'practice':
      return say('source.practice')
    case 'memory':
      return say('source.memory')
    case 'derived':
      return cited === '' ? say('source.derived') : say('source.derived-titled', { title: cited })
    default:
      return say('source.published', { cited })
  }
}
