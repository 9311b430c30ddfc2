import { bad, good, type Result } from '../basics/result.ts'

/**
 * What hands, a picket and a look at the pit say of the ground at the depth of the footing. null: not tried yet; 'unsure' counts as the weaker.
 * Picket: a 50 × 50 mm stake pushed in by a grown person's weight. Thumb: on undisturbed soil of the pit's side. Canadian housing table of bearing pressures.
 */
export interface HandTests {
  readonly ground: 'natural' | 'filled' | 'peat' | 'cracks-wide' | 'mud' | 'unsure' | null
  readonly handful: 'falls-apart' | 'stones' | 'crumbles' | 'sticky-ribbon' | 'hard-red' | 'rock' | 'unsure' | null
  readonly thumb: 'sinks-easily' | 'moderate' | 'hardly' | 'unsure' | null
  readonly picketM: number | null
}

export interface SoilVerdict {
  /** Key of the soil in the catalogue. */
  readonly soil: string
  /** Row of the table that decided; its wording is under `soil-rule.<row>`. */
  readonly row: SoilRow['id']
}

export type SoilProblem =
  | { readonly kind: 'test-missing'; readonly test: keyof HandTests }
  | { readonly kind: 'picket-out-of-range'; readonly picketM: number }

/** How far the picket must not go: further is loose sand or soft clay. */
const PICKET_LIMIT_M = 0.2
const PICKET_LENGTH_M = 1

interface SoilRow {
  readonly id: string
  readonly ground?: readonly HandTests['ground'][]
  readonly handful?: readonly HandTests['handful'][]
  readonly thumb?: readonly HandTests['thumb'][]
  readonly picket?: 'deep' | 'held'
  readonly soil: string
}

/** Read from the top: the first row whose every entry is met decides. A row that asks for a test not yet tried asks for it. */
export const SOIL_TABLE: readonly SoilRow[] = [
  { id: 'filled', ground: ['filled'], soil: 'not-to-build' },
  { id: 'peat', ground: ['peat'], soil: 'not-to-build' },
  { id: 'cracks-wide', ground: ['cracks-wide'], soil: 'not-to-build' },
  { id: 'mud', ground: ['mud'], soil: 'not-to-build' },
  { id: 'ground-unsure', ground: ['unsure'], soil: 'not-to-build' },
  { id: 'rock', handful: ['rock'], soil: 'rock-soft' },
  {
    id: 'clay-soft',
    handful: ['sticky-ribbon', 'crumbles', 'unsure'],
    thumb: ['sinks-easily', 'unsure'],
    soil: 'clay-soft',
  },
  { id: 'clay-picket-deep', handful: ['sticky-ribbon', 'crumbles', 'unsure'], picket: 'deep', soil: 'clay-soft' },
  { id: 'handful-unsure', handful: ['unsure'], soil: 'clay-soft' },
  { id: 'clay-stiff', handful: ['sticky-ribbon'], thumb: ['hardly'], soil: 'clay-stiff' },
  { id: 'clay-firm', handful: ['sticky-ribbon', 'crumbles'], thumb: ['moderate', 'hardly'], soil: 'clay-firm' },
  { id: 'loose', handful: ['falls-apart', 'stones', 'hard-red'], picket: 'deep', soil: 'sand-loose' },
  { id: 'sand-dense', handful: ['falls-apart'], picket: 'held', soil: 'sand-dense' },
  { id: 'gravel', handful: ['stones'], picket: 'held', soil: 'gravel-sandy' },
  { id: 'laterite', handful: ['hard-red'], picket: 'held', soil: 'laterite' },
]

/** The class of the ground from the hand tests; a person's advice from the place goes before any table. */
export function soilByHand(tests: HandTests): Result<SoilVerdict, SoilProblem> {
  const { picketM } = tests
  if (picketM !== null && !(picketM >= 0 && picketM <= PICKET_LENGTH_M))
    return bad({ kind: 'picket-out-of-range', picketM })
  if (tests.ground === null) return bad({ kind: 'test-missing', test: 'ground' })
  for (const row of SOIL_TABLE) {
    const met = rowMet(row, tests)
    if (met === true) return good({ soil: row.soil, row: row.id })
    if (met !== false) return bad({ kind: 'test-missing', test: met })
  }
  return bad({ kind: 'test-missing', test: 'handful' })
}

/** The tests in the order in which they are asked for, and the verdict once none is missing: an answer that no longer decides is not asked for. */
export function testsAsked(tests: HandTests): {
  readonly asked: readonly (keyof HandTests)[]
  readonly verdict: SoilVerdict | null
} {
  const asked: (keyof HandTests)[] = []
  let known: HandTests = { ground: null, handful: null, thumb: null, picketM: null }
  for (;;) {
    const read = soilByHand(known)
    if (read.ok) return { asked, verdict: read.value }
    const [problem] = read.problems
    if (problem?.kind !== 'test-missing') return { asked, verdict: null }
    const { test } = problem
    asked.push(test)
    if (tests[test] === null) return { asked, verdict: null }
    known = { ...known, [test]: tests[test] }
  }
}

/** Met, not met, or the test that must be tried first. */
function rowMet(row: SoilRow, tests: HandTests): boolean | keyof HandTests {
  for (const test of ['ground', 'handful', 'thumb'] as const) {
    const allowed: readonly unknown[] | undefined = row[test]
    if (allowed === undefined) continue
    if (tests[test] === null) return test
    if (!allowed.includes(tests[test])) return false
  }
  if (row.picket === undefined) return true
  if (tests.picketM === null) return 'picketM'
  return tests.picketM > PICKET_LIMIT_M === (row.picket === 'deep')
}
