import * as z from 'zod/mini'
import heatJson from '../../../shared/heat.json' with { type: 'json' }
import { SOURCES, type SourceId } from '../sources/sources.ts'

const source = z.custom<SourceId>((value) => typeof value === 'string' && value in SOURCES)
const number = z.number()

const schema = z.object({
  materials: z.array(
    z.strictObject({
      key: z.enum(['concrete-block', 'fired-brick', 'clay', 'earth-block', 'sand', 'render', 'ground']),
      conductivity: number,
      density: number,
      heat: number,
      source,
    }),
  ),
  films: z.strictObject({ inside: number, insideCooling: number, outside: number, source }),
  cell: z.strictObject({ convection: number, airConductivity: number, emittance: number, meanDegC: number, source }),
  fireZone: z.strictObject({ hotterLowK: number, hotterHighK: number, source }),
  burn: z.strictObject({ minuteDegC: number, secondDegC: number, source }),
  draught: z.strictObject({ constant: number, source }),
})

/** Thermal figures, checked once when the app starts. */
export const HEAT_DATA = schema.parse(heatJson)

export type Material = (typeof HEAT_DATA.materials)[number]

/** Conductivity, density and specific heat of a material, with their source. */
export function materialOf(key: Material['key']): Material {
  const found = HEAT_DATA.materials.find((one) => one.key === key)
  if (found === undefined) throw new Error(`no such material: ${key}`)
  return found
}
