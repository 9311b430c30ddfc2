import { compassPoint } from '../../../core/geometry/wind.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { say } from '../../words/catalogue.ts'
import { currencyName } from '../../words/currencies.ts'
import type { Words } from '../../words/words.ts'
import type { PlanCard } from './cards.ts'

/** The present answer to each decision, in one line. */
export function answerTo(card: PlanCard, { plan, tray }: WorkedOut, words: Words): string {
  const { named, length, mass, share, sizes } = words
  switch (card) {
    case 'catch':
      return say('answer.catch', { mass: mass(plan.catch.freshKgPerDay), firings: plan.catch.firingsPerDay })
    case 'chambers':
      return say('answer.chambers', { count: plan.chambers.count, side: length(plan.chambers.clearSideM) })
    case 'walls': {
      const { unit } = plan.walls
      return say('answer.walls', {
        family: named(`family.${unit.family}`),
        sizes: sizes(unit.lengthM, unit.widthM, unit.heightM),
      })
    }
    case 'openings':
      return say('answer.openings', {
        width: length(plan.openings.widthM),
        head: named(`head.${plan.openings.head}`).toLocaleLowerCase(),
      })
    case 'ground':
      return say('answer.ground', {
        soil: named(`soil.${plan.ground.soil}`),
        footing: named(`footing.${plan.ground.footing}`).toLocaleLowerCase(),
      })
    case 'trays':
      return say('answer.trays', { count: tray.count.value, side: length(tray.side.value) })
    case 'place':
      return plan.place.windDayDeg === null
        ? say('answer.place-unknown')
        : say('answer.place', {
            facing: named(`facing.${plan.place.facing}`).toLocaleLowerCase(),
            wind: named(`wind.${compassPoint(plan.place.windDayDeg)}`),
          })
    case 'mixes':
      return say('answer.mixes', { sand: plan.mixes.concrete.sand, stone: plan.mixes.concrete.stone })
    case 'money':
      return say('answer.money', { currency: currencyName(plan.currency.code), share: share(plan.money.contingency) })
    case 'show':
      return say('answer.show', { length: named(`length.${plan.show.length}`), mass: named(`mass.${plan.show.mass}`) })
    default:
      return card satisfies never
  }
}
