import type { Words } from '../../words/words.ts'

/** A level over the ground at peg A, with its sign: +365, ±0, −99. */
export function levelText(levelM: number, { figure }: Words): string {
  const { figure: text } = figure(levelM, 'm')
  return Math.abs(levelM) < 5e-5 ? `±${text.replace('−', '')}` : levelM > 0 ? `+${text}` : text
}
