import { givenUp, type Design } from '../../../core/choosing/within-our-money.ts'
import type { WallChoice } from '../../../core/choosing/with-walls.ts'
import type { WallUnit } from '../../../core/plan/schema.ts'
import type { Words } from '../../words/words.ts'

/** Pressed earth block 290 × 140 × 90 mm. */
export const unitText = (
  { family, lengthM, widthM, heightM }: Pick<WallUnit, 'family' | 'lengthM' | 'widthM' | 'heightM'>,
  { named, sizes }: Words,
): string => `${named(`family.${family}`)} ${sizes(lengthM, widthM, heightM)}`

/** The unit, with the bond where the wall is a brick thick. */
export const wallsText = ({ unit, leaf, bond }: WallChoice, words: Words): string =>
  leaf === 'single' ? unitText(unit, words) : `${unitText(unit, words)}, ${words.named(`bond.${bond}`)}`

/** What one gives up by taking this kiln and not another of those worth choosing. */
export function givenUpText(design: Design, among: readonly Design[], words: Words): readonly string[] {
  const { say } = words
  const lost = givenUp(design, among)
  const parts: string[] = []
  if (lost.freshKgPerDay > 0) parts.push(say('within.less-fish', { mass: words.mass(lost.freshKgPerDay) }))
  if (lost.moneyMinor > 0) parts.push(say('within.more-money', { money: words.money(lost.moneyMinor) }))
  if (lost.days > 0) parts.push(say('within.more-days', { count: lost.days }))
  if (lost.boughtInMinor > 0) parts.push(say('within.more-bought', { money: words.money(lost.boughtInMinor) }))
  return parts
}

/** Which of two designs this is: everything that was varied. */
export const designKey = ({ walls, chambers, clearSideM, aboveM, perChamber }: Design): string =>
  [walls.unit.key, walls.leaf, walls.bond, chambers, clearSideM, aboveM, perChamber].join(' ')
