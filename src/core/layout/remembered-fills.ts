import type { PieceRule } from './cut-placing.ts'
import type { CutPlace } from './layout-choices.ts'
import { fillRun, type Fill } from './run-filling.ts'

/** Rules for units along the wall and, in one-brick walls, across it. */
export interface WallRules {
  readonly along: PieceRule
  readonly across: PieceRule
}

export type Fillers = (
  lie: 'along' | 'across',
  run: number,
  startJoint: boolean,
  endJoint: boolean,
  avoid: readonly number[],
  place: CutPlace,
) => Fill

interface Remembered {
  readonly kind: string
  readonly run: number
  readonly avoid: readonly number[]
  readonly fill: Fill
}

function sameNumbers(a: readonly number[], b: readonly number[]): boolean {
  if (a.length !== b.length) return false
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false
  return true
}

/** `fillRun` that remembers: chambers repeat, and so do their runs. */
export function fillersFor(rules: WallRules): Fillers {
  const byHash = new Map<number, Remembered[]>()
  return (lie, run, startJoint, endJoint, avoid, place) => {
    const kind = `${lie}${startJoint ? 1 : 0}${endJoint ? 1 : 0}${place}`
    let hash = run
    // Perpends lie on half micrometres.
    for (const at of avoid) hash = (Math.imul(hash, 31) + at * 2) | 0
    const alike = byHash.get(hash) ?? []
    for (const one of alike) if (one.run === run && one.kind === kind && sameNumbers(one.avoid, avoid)) return one.fill
    const fill = fillRun(rules[lie], run, startJoint, endJoint, avoid, place)
    alike.push({ kind, run, avoid, fill })
    byHash.set(hash, alike)
    return fill
  }
}
