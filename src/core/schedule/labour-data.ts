import * as z from 'zod/mini'
import labourJson from '../../../shared/labour.json' with { type: 'json' }
import { cited, type Derived } from '../basics/derived.ts'
import { SOURCES, type SourceId } from '../sources/sources.ts'

const source = z.custom<SourceId>((value) => typeof value === 'string' && value in SOURCES)
const wait = z.strictObject({ days: z.number(), source })
const UNITS_OF_RATES = ['h/m2', 'h/m3', 'h/piece'] as const

const schema = z.object({
  rates: z.array(z.strictObject({ key: z.string(), unit: z.enum(UNITS_OF_RATES), value: z.number(), source })),
  waits: z.strictObject({
    footing: wait,
    curing: wait,
    clayLiftM: z.number(),
    clayLift: wait,
    clayDrying: wait,
    firstFires: wait,
  }),
})

/** Outputs and waits, checked once when the app starts. */
export const LABOUR_DATA = schema.parse(labourJson)

type RateUnit = (typeof UNITS_OF_RATES)[number]

/** Hours for one unit of some work, as published or as common. */
export function rate<U extends RateUnit>(key: string, unit: U): Derived<U> {
  const found = LABOUR_DATA.rates.find((one) => one.key === key && one.unit === unit)
  if (found === undefined) throw new Error(`no such rate: ${key} in ${unit}`)
  return cited(`rate.${key}`, unit, found.value, found.source)
}

/** Days that a material needs before the next task, with their source. */
export const waitDays = (key: 'footing' | 'curing' | 'clayLift' | 'clayDrying' | 'firstFires'): Derived<'day'> =>
  cited(`wait.${key}`, 'day', LABOUR_DATA.waits[key].days, LABOUR_DATA.waits[key].source)
