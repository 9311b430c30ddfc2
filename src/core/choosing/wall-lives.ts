import * as z from 'zod/mini'
import livesJson from '../../../shared/wall-lives.json' with { type: 'json' }
import { wallUnitSchema, type WallUnit } from '../plan/schema.ts'
import { SOURCES, type SourceId } from '../sources/sources.ts'

const schema = z.object({
  lives: z.array(
    z.strictObject({
      family: wallUnitSchema.shape.family,
      fromYears: z.nullable(z.number()),
      toYears: z.nullable(z.number()),
      says: z.string(),
      source: z.custom<SourceId>((value) => typeof value === 'string' && value in SOURCES),
      likeness: z.boolean(),
    }),
  ),
})

export type WallLife = z.infer<typeof schema>['lives'][number]

const LIVES = schema.parse(livesJson).lives

/** What print says of how long a kiln of such units lasts; where sources disagree, each of them. */
export const livesOf = (family: WallUnit['family']): readonly WallLife[] =>
  LIVES.filter((life) => life.family === family)
