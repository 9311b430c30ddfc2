import * as z from 'zod/mini'
import { LIMITS, MOST_MONEY_MINOR, type LimitedField } from './limits.ts'

/** Kinds of field that the parts of the plan share; each checks its own limits. */
export const within = (field: LimitedField) => z.number().check(z.gte(LIMITS[field].min), z.lte(LIMITS[field].max))
/** A whole number within the limits of its field. */
export const wholeWithin = (field: LimitedField) => z.int().check(z.gte(LIMITS[field].min), z.lte(LIMITS[field].max))
export const label = z.string().check(z.maxLength(80))
export const key = z.string().check(z.minLength(1), z.maxLength(60))
export const minor = z.int().check(z.gte(0), z.lte(MOST_MONEY_MINOR))
export const day = z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}$/))
/** A length from nothing to the most, m. */
export const metres = (most: number) => z.number().check(z.gte(0), z.lte(most))
