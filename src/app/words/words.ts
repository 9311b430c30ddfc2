import type { Derived } from '../../core/basics/derived.ts'
import type { Finding, FindingArg, Remedy } from '../../core/basics/finding.ts'
import type { Unit } from '../../core/basics/unit.ts'
import { hasWord, say, sayNamed, type WordArgs, type WordKey } from './catalogue.ts'
import { showIsoDay } from './dates.ts'
import { showFigure, showShare } from './figure.ts'
import { languageNow, type Language } from './language.ts'
import { showLength } from './length.ts'
import { showNumber } from './locale.ts'
import { showMass } from './mass.ts'
import { moneyText } from './money.ts'
import { inLine, type Figure, type Show } from './show.ts'

/** Everything that turns numbers and names into text for one reader. */
export interface Words {
  readonly show: Show
  readonly language: Language
  readonly say: (key: WordKey, args?: WordArgs) => string
  readonly named: (key: string, args?: WordArgs) => string
  readonly number: (value: number, most?: number) => string
  readonly length: (lengthM: number) => string
  /** Sizes of a thing, as the trade writes them: 450 × 150 × 225 mm. */
  readonly sizes: (...lengthsM: readonly number[]) => string
  readonly mass: (massKg: number) => string
  readonly money: (minor: number) => string
  readonly share: (share: number) => string
  readonly figure: (value: number, unit: Unit) => Figure
  readonly inLine: (value: number, unit: Unit) => string
  readonly nameOf: (derived: Derived) => string
  readonly finding: (finding: Pick<Finding, 'kind' | 'args'>) => string
  readonly remedy: (remedy: Pick<Remedy, 'kind' | 'args'>) => string
}

const ISO_DAY = /^\d{4}-\d{2}-\d{2}$/

export function wordsFor(show: Show, language = languageNow()): Words {
  const text = (arg: FindingArg, as = show): string | number => {
    if (typeof arg === 'number') return arg
    if (typeof arg === 'string') return hasWord(arg) ? sayNamed(arg) : ISO_DAY.test(arg) ? showIsoDay(arg) : arg
    return arg.unit === 'money' ? moneyText(arg.value, show.currency) : inLine(showFigure(arg.value, arg.unit, as))
  }
  const filled = (args: Readonly<Record<string, FindingArg>>, as = show): WordArgs =>
    Object.fromEntries(Object.entries(args).map(([name, arg]) => [name, text(arg, as)]))
  // How far a neighbour stands is paced out: nobody says it in millimetres.
  const paced: Show = show.length === 'ft-in' ? show : { ...show, length: 'm' }
  return {
    show,
    language,
    say,
    named: sayNamed,
    number: showNumber,
    length: (lengthM) => inLine(showLength(lengthM, show)),
    sizes: (...lengthsM) => sizesText(lengthsM, show),
    mass: (massKg) => inLine(showMass(massKg, show)),
    money: (minor) => moneyText(minor, show.currency),
    share: (share) => inLine(showShare(share)),
    figure: (value, unit) => showFigure(value, unit, show),
    inLine: (value, unit) => inLine(showFigure(value, unit, show)),
    nameOf: (derived) => sayNamed(`working.${derived.id}`, filled(derived.args ?? {})),
    finding: ({ kind, args }) =>
      sayNamed(`finding.${kind}`, filled(args, kind.startsWith('place.near-') ? paced : show)),
    remedy: ({ kind, args }) => sayNamed(`remedy.${kind}`, filled(args)),
  }
}

/** The unit is said once, at the end, except in feet and inches, where it is part of the figure. */
function sizesText(lengthsM: readonly number[], show: Show): string {
  const figures = lengthsM.map((lengthM) => showLength(lengthM, show))
  const units = new Set(figures.map(({ unit }) => unit))
  if (units.size > 1) return figures.map(inLine).join(' × ')
  return inLine({ figure: figures.map(({ figure }) => figure).join(' × '), unit: figures[0]?.unit ?? '' })
}
