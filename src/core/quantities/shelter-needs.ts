import { lotsFor, SAME_LENGTH_M } from '../basics/count.ts'
import { cited, derive } from '../basics/derived.ts'
import type { Shelter, ShelterTimber } from '../geometry/shelter.ts'
import { CATALOGUE_TIMBER } from '../plan/catalogue.ts'
import type { Plan } from '../plan/schema.ts'
import { need, type Need } from './need.ts'
import { lengthsNeed, timberWaste, type PieceGroup } from './timber.ts'

const STOCK = cited('roof.stock', 'm', CATALOGUE_TIMBER.lengthsM[0] ?? 3.6, CATALOGUE_TIMBER.source)
const NAILS_PER_KG = cited('roof.nails-per-kg', 'piece/kg', 100, 'memory')
const FIXING_WASTE = cited('waste.fixings', '1', 0.1, 'common-practice')
const NO_WASTE = cited('waste.none', '1', 0, 'common-practice')

/** Posts, rafters and purlins, sheets and fixings of the open roof. What is longer than the usual timber is joined over a post or rafter. */
export function shelterNeeds(plan: Plan, shelter: Shelter | null): Need[] {
  if (shelter === null) return []
  const waste = timberWaste(plan.waste.timber)
  const posts = shelter.timbers.filter(({ kind }) => kind === 'post').map(partsOf)
  const others = shelter.timbers.filter(({ kind }) => kind !== 'post').map(partsOf)
  const nails = derive(
    'need.roof-nails',
    'kg',
    'n / k',
    { n: shelter.sheetNails, k: NAILS_PER_KG },
    (of) => of.n / of.k,
  )
  return [
    lengthsNeed('roof-post', 'shelter', 'roof', posts, waste),
    lengthsNeed('roof-rafter', 'shelter', 'roof', others, waste),
    need('roof-sheet', 'shelter', 'roof', shelter.sheets, NO_WASTE),
    need('roof-nails', 'shelter', 'roof', nails, FIXING_WASTE),
    need('roof-strap', 'shelter', 'roof', shelter.strapFixings, FIXING_WASTE),
  ]
}

function partsOf({ kind, count, length }: ShelterTimber): PieceGroup {
  const label = `piece.${kind}`
  const args = { piece: label }
  if (length.value <= STOCK.value + SAME_LENGTH_M) return { length, count, label }
  const k = derive('roof.parts', '1', 'ceil(l / s)', { l: length, s: STOCK }, (of) => lotsFor(of.l, of.s))
  return {
    length: derive('roof.part', 'm', 'l / k', { l: length, k }, (of) => of.l / of.k, { args }),
    count: derive('roof.pieces', 'piece', 'n · k', { n: count, k }, (of) => of.n * of.k, { args }),
    label,
  }
}
