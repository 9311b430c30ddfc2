import type { Finding } from '../../../core/basics/finding.ts'

const RANK = { problem: 0, caution: 1, good: 2 } as const

/** Worst first; the order of equals stays. List and drawings number them in this order. */
export const worstFirst = (findings: readonly Finding[]): readonly Finding[] =>
  findings.toSorted((a, b) => RANK[a.level] - RANK[b.level])
