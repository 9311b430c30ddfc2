import { wholeNear } from '../basics/count.ts'
import { derive, typed, type Derived } from '../basics/derived.ts'
import type { Firing, Plan } from '../plan/schema.ts'

/** Money of one firing in minor units: what it cost, what it brought, what is left. */
export interface FiringAccount {
  readonly fish: Derived<'money'>
  readonly wood: Derived<'money'>
  readonly other: Derived<'money'>
  readonly cost: Derived<'money'>
  readonly sales: Derived<'money'>
  readonly net: Derived<'money'>
}

/** A mass at its price, to the nearest minor unit. */
const priced = (id: string, mass: Derived<'kg'>, price: Derived<'money/kg'>): Derived<'money'> =>
  derive(id, 'money', 'round(m · p)', { m: mass, p: price }, (v) => wholeNear(v.m * v.p))

const priceField = ['freshPriceMinor', 'woodPriceMinor', 'smokedPriceMinor', 'otherCostMinor'] as const

/** Prices that the account of a firing still wants, as fields of the plan. */
export const missingPrices = ({ run }: Plan): readonly string[] =>
  priceField.filter((field) => run[field] === null).map((field) => `run.${field}`)

/** The account of one firing at the plan's prices; null while a price is missing. */
export function firingAccount(
  { run }: Plan,
  masses: { readonly fresh: Derived<'kg'>; readonly wood: Derived<'kg'>; readonly product: Derived<'kg'> },
): FiringAccount | null {
  const { freshPriceMinor, woodPriceMinor, smokedPriceMinor, otherCostMinor } = run
  if (freshPriceMinor === null || woodPriceMinor === null || smokedPriceMinor === null || otherCostMinor === null)
    return null
  const price = (id: string, minor: number, field: string) => typed(id, 'money/kg', minor, field)
  const fish = priced('account.fish', masses.fresh, price('price.fresh', freshPriceMinor, 'run.freshPriceMinor'))
  const wood = priced('account.wood', masses.wood, price('price.wood', woodPriceMinor, 'run.woodPriceMinor'))
  const other = typed('account.other', 'money', otherCostMinor, 'run.otherCostMinor')
  const sales = priced('account.sales', masses.product, price('price.smoked', smokedPriceMinor, 'run.smokedPriceMinor'))
  const cost = derive('account.cost', 'money', 'f + w + o', { f: fish, w: wood, o: other }, (v) => v.f + v.w + v.o)
  return {
    fish,
    wood,
    other,
    cost,
    sales,
    net: derive('account.net', 'money', 's − c', { s: sales, c: cost }, (v) => v.s - v.c),
  }
}

type OpenMoney = Pick<Firing, 'fishCostMinor' | 'woodCostMinor' | 'otherCostMinor' | 'salesMinor'>

/** Money of a logged firing that is still open, by the plan's prices and the masses written down; what is missing either stays open. */
export function openMoneyByPrices({ run }: Plan, firing: Firing): Partial<OpenMoney> {
  const by = (massKg: number | null, priceMinor: number | null) =>
    massKg === null || priceMinor === null ? null : wholeNear(massKg * priceMinor)
  const priced: OpenMoney = {
    fishCostMinor: by(firing.freshKg, run.freshPriceMinor),
    woodCostMinor: by(firing.woodKg, run.woodPriceMinor),
    otherCostMinor: run.otherCostMinor,
    salesMinor: by(firing.productKg, run.smokedPriceMinor),
  }
  return Object.fromEntries(
    Object.entries(priced).filter(([field, minor]) => minor !== null && firing[field as keyof OpenMoney] === null),
  )
}
