import { typed, type Derived } from '../basics/derived.ts'
import type { Plan } from '../plan/schema.ts'
import type { ItemKey, ItemUnit } from './items.ts'
import { concreteAmounts, mortarAmounts } from './mix.ts'
import { need, type Need, type Section } from './need.ts'

/** What goes into a volume of concrete, waste apart. */
export function concreteNeeds(volume: Derived<'m3'>, section: Section, use: string, plan: Plan): Need[] {
  if (volume.value <= 0) return []
  const waste = typed('waste.concrete', '1', plan.waste.concrete, 'waste.concrete')
  const { cement, sand, stone, water } = concreteAmounts(volume, plan.mixes.concrete)
  return present(section, use, waste, { cement, sand, stone, water })
}

/** What goes into a volume of mortar, waste apart. */
export function mortarNeeds(volume: Derived<'m3'>, section: Section, use: string, plan: Plan): Need[] {
  if (volume.value <= 0) return []
  const waste = typed('waste.mortar', '1', plan.waste.mortar, 'waste.mortar')
  const { cement, clay, sand, water } = mortarAmounts(volume, plan.mixes.mortar)
  return present(section, use, waste, { cement, clay, sand, water })
}

const present = (
  section: Section,
  use: string,
  waste: Derived<'1'>,
  amounts: Partial<Record<ItemKey, Derived<ItemUnit>>>,
): Need[] =>
  Object.entries(amounts)
    .filter(([, amount]) => amount.value > 0)
    .map(([item, amount]) => need(item as ItemKey, section, use, amount, waste))
