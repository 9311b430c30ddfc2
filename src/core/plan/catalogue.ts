import * as z from 'zod/mini'
import mixesJson from '../../../shared/mixes.json' with { type: 'json' }
import soilsJson from '../../../shared/soils.json' with { type: 'json' }
import speciesJson from '../../../shared/species.json' with { type: 'json' }
import timberJson from '../../../shared/timber.json' with { type: 'json' }
import wallUnitsJson from '../../../shared/wall-units.json' with { type: 'json' }
import { SOURCES, type SourceId } from '../sources/sources.ts'
import { wallUnitSchema, type WallUnit } from './schema.ts'

const sourceId = z.custom<SourceId>((value) => typeof value === 'string' && value in SOURCES)
const number = z.number()

const wallUnits = z.object({
  units: z.array(
    z.extend(wallUnitSchema, {
      joint: z.strictObject({ minM: number, usualM: number, maxM: number }),
      sources: z.strictObject({ size: sourceId, void: z.optional(sourceId), voidRange: z.optional(sourceId) }),
    }),
  ),
})
const soils = z.object({
  soils: z.array(
    z.strictObject({
      key: z.string(),
      bearingKPa: number,
      source: sourceId,
      loose: number,
      compacted: number,
      bulkingSource: sourceId,
      digHoursPerM3: number,
      digSource: sourceId,
      build: z.boolean(),
    }),
  ),
})
const mixes = z.object({
  cement: z.strictObject({ bagKg: number, looseKgM3: number, source: sourceId }),
  concrete: z.array(
    z.strictObject({
      key: z.string(),
      cement: number,
      sand: number,
      stone: number,
      dryFactor: number,
      source: sourceId,
    }),
  ),
  mortar: z.array(
    z.strictObject({
      key: z.string(),
      cement: number,
      clay: number,
      sand: number,
      dryFactor: number,
      source: sourceId,
    }),
  ),
  waterLitrePerBag: z.strictObject({ concrete: number, mortar: number, source: sourceId }),
  fill: z.array(
    z.strictObject({ key: z.enum(['sand', 'clay']), compaction: number, densityKgM3: number, source: sourceId }),
  ),
  waste: z.strictObject({
    concrete: number,
    blockMortar: number,
    brickMortar: number,
    units: number,
    source: sourceId,
  }),
})
/** How far a figure spreads among fish of one form. */
const spread = z.strictObject({ from: number, to: number, source: sourceId })
const species = z.object({
  forms: z.array(
    z.strictObject({
      key: z.enum(['small-whole', 'large-cut', 'catfish']),
      moisture: number,
      dressingLoss: number,
      loading: z.enum(['single-layer', 'packed']),
      loadKgPerTray: number,
      loadKgPerM2: number,
      sources: z.strictObject({ moisture: sourceId, load: sourceId, dressing: sourceId }),
      ranges: z.strictObject({ moisture: spread, dressingLoss: spread }),
    }),
  ),
})
const timber = z.object({
  sections: z.array(z.strictObject({ key: z.string(), thicknessM: number, depthM: number })),
  lengthsM: z.array(number),
  densityKgM3: number,
  source: sourceId,
})

/** The data files of the product, checked once when the app starts: a slip in a file is a bug and throws. */
export const CATALOGUE_UNITS = wallUnits.parse(wallUnitsJson).units
export const CATALOGUE_SOILS = soils.parse(soilsJson).soils
export const CATALOGUE_MIXES = mixes.parse(mixesJson)
export const CATALOGUE_FORMS = species.parse(speciesJson).forms
export const CATALOGUE_TIMBER = timber.parse(timberJson)

export type CatalogueUnit = (typeof CATALOGUE_UNITS)[number]
export type Soil = (typeof CATALOGUE_SOILS)[number]

/** The soil of a plan; a key that this version does not know counts as ground not to build on. */
export const soilOf = (key: string): Soil => {
  const found = CATALOGUE_SOILS.find((soil) => soil.key === key) ?? CATALOGUE_SOILS.at(-1)
  if (found === undefined) throw new Error('no soils in the catalogue')
  return found
}

/** The unit alone, as a plan keeps it. */
export const asWallUnit = ({ joint: _joint, sources: _sources, ...unit }: CatalogueUnit): WallUnit => unit
