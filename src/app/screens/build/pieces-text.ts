import type { Pieces } from '../../../core/layout/pieces-to-lay.ts'
import type { BesideTheWall } from '../../../core/schedule/beside-the-wall.ts'
import type { Words } from '../../words/words.ts'

/** Cut lengths with how many of each: 2 of 325 mm, 4 of 210 mm. */
export const cutsText = ({ cuts }: Pick<Pieces, 'cuts'>, { say, length }: Words): string =>
  cuts.map(({ lengthM, count, way }) => say('build.cut-of', { count, way, length: length(lengthM) })).join(', ')

/** What to carry to the wall for a day's courses. */
export function besideText({ courses, pieces }: BesideTheWall, words: Words): string {
  const from = courses[0]?.index ?? 0
  const to = courses.at(-1)?.index ?? from
  const { say } = words
  return say('build.beside-text', {
    span: from === to ? say('build.span-one', { course: from }) : say('build.span', { from, to }),
    fetch: pieces.toFetch,
    pieces: piecesText(pieces, words),
  })
}

/** Whole units and cut ones in a line. */
export function piecesText(pieces: Pieces, words: Words): string {
  const { say } = words
  const whole = say('build.whole', { count: pieces.whole })
  return pieces.cuts.length === 0
    ? say('build.pieces-whole', { whole })
    : say('build.pieces', { whole, cuts: cutsText(pieces, words) })
}
