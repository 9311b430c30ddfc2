import * as z from 'zod/mini'
import productsJson from '../../../shared/fish-products.json' with { type: 'json' }
import { SOURCES, type SourceId } from '../sources/sources.ts'

const source = z.custom<SourceId>((value) => typeof value === 'string' && value in SOURCES)
const number = z.number()
const span = z.strictObject({ from: number, to: number })
const stage = z.strictObject({ fromDegC: number, toDegC: number, source })

const schema = z.object({
  products: z.array(
    z.strictObject({
      key: z.enum(['soft', 'half-dry', 'hard-dry', 'very-dry']),
      moisture: number,
      moistureFrom: number,
      moistureTo: number,
      keepsDays: z.nullable(span),
      hours: span,
      source,
      hoursSource: source,
    }),
  ),
  loading: z.strictObject({ layerFromKgM2: number, layerToKgM2: number, packedMostKg: number, source }),
  turnMinutes: z.strictObject({ value: number, source }),
  stages: z.strictObject({ cook: stage, dry: stage }),
  wood: z.strictObject({
    ratioLow: number,
    ratioHigh: number,
    ratioSource: source,
    ncvDry: number,
    ncvSlope: number,
    ncvSource: source,
    burntLow: number,
    burntHigh: number,
    burntSource: source,
    dryMoisture: number,
    drySource: source,
    stackedKgM3: number,
    stackedSource: source,
    storeDays: number,
    storeSource: source,
  }),
  water: z.strictObject({
    latentAtZero: number,
    latentSlope: number,
    heat: number,
    solidsHeat: number,
    latentSource: source,
    heatSource: source,
  }),
  air: z.strictObject({ heat: number, pickUpLow: number, pickUpHigh: number, source }),
})

/** Products, stages, wood and water, checked once when the app starts. */
export const FISH_DATA = schema.parse(productsJson)

export type FishProduct = (typeof FISH_DATA.products)[number]
