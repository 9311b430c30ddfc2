import { derive, sumOf, type Derived } from '../basics/derived.ts'
import { wholeNear } from '../basics/count.ts'
import { SECTIONS, type Need, type Section } from '../quantities/need.ts'

export interface SectionCost {
  readonly section: Section
  readonly cost: Derived<'money'>
}

/** Cost of each part of the kiln. What several parts share is divided by what each needs, whole to the minor unit. */
export function sectionCosts(
  lines: readonly { readonly cost: Derived<'money'> | null; readonly needs: readonly Need[] }[],
): readonly SectionCost[] {
  const parts = new Map<Section, Derived<'money'>[]>()
  for (const { cost, needs } of lines) {
    if (cost === null) continue
    for (const [section, share] of sharesOf(cost, needs)) {
      const list = parts.get(section)
      if (list === undefined) parts.set(section, [share])
      else list.push(share)
    }
  }
  return SECTIONS.flatMap((section) => {
    const list = parts.get(section)
    return list === undefined
      ? []
      : [{ section, cost: sumOf('cost.section', 'money', list, { args: { section: `section.${section}` } }) }]
  })
}

/**
 * Shares of one cost by need: each is the rounded cost up to and with this need, less what went before, so that the shares add up exactly and
 * none is negative.
 */
function sharesOf(cost: Derived<'money'>, needs: readonly Need[]): [Section, Derived<'money'>][] {
  const [only] = needs
  if (only !== undefined && needs.every((one) => one.section === only.section)) return [[only.section, cost]]
  const all = sumOf(
    'cost.need-all',
    only?.gross.unit ?? '1',
    needs.map((one) => one.gross),
  )
  let before: Derived<'money'> | null = null
  return needs.map((one, at) => {
    const reached = sumOf(
      'cost.need-reached',
      all.unit,
      needs.slice(0, at + 1).map((each) => each.gross),
    )
    const upTo = derive('cost.up-to', 'money', 'round(c · r / a)', { c: cost, r: reached, a: all }, (of) =>
      wholeNear((of.c * of.r) / of.a),
    )
    const share =
      before === null
        ? upTo
        : derive('cost.share', 'money', 'u − b', { u: upTo, b: before }, (of) => of.u - of.b, {
            args: { section: `section.${one.section}` },
          })
    before = upTo
    return [one.section, share]
  })
}
