import type { Finding, FindingArg, Remedy } from '../basics/finding.ts'
import type { Layout, LayoutFinding, Remedy as LayoutRemedy } from './contract.ts'

const metres = (value: number): FindingArg => ({ value, unit: 'm' })

/** What the layout found, in the form that every screen shows: wording under `finding.layout.<kind>`. Of one kind in one wall the worst speaks, and of a pillar that no bond suits only that. */
export const layoutFindings = ({ findings, courses }: Pick<Layout, 'findings' | 'courses'>): Finding[] =>
  worstOfEach(findings).map((one) => ({
    level: levelOf(one),
    kind: `layout.${one.kind}`,
    args: argsOf(one),
    ...('wall' in one && { at: { xM: one.xM, yM: one.yM, zM: middleOf(courses, one.courses[0] ?? 1) } }),
    card: one.kind.startsWith('opening') || one.kind.startsWith('head') || isHead(one.kind) ? 'openings' : 'walls',
    remedies:
      one.kind === 'pillar-unbonded' ? one.remedies.map(remedyOf) : 'remedy' in one ? [remedyOf(one.remedy)] : [],
  }))

function worstOfEach(findings: readonly LayoutFinding[]): LayoutFinding[] {
  const worst = new Map<string, LayoutFinding>()
  const pillars = findings.filter((one) => one.kind === 'pillar-unbonded')
  for (const one of findings) {
    if ((one.kind === 'lap-short' || one.kind === 'piece-short') && one.wall === 'front')
      if (pillars.some(({ xM, pillarM }) => Math.abs(one.xM - xM) < pillarM / 2)) continue
    const key = 'wall' in one ? `${one.kind} ${one.wall}` : one.kind
    const known = worst.get(key)
    if (known === undefined || shortfall(one) > shortfall(known)) worst.set(key, one)
  }
  return [...worst.values()]
}

/** How far from what it should be, m; 0 for what has no measure. */
function shortfall(one: LayoutFinding): number {
  if (one.kind === 'lap-short') return one.neededM - one.lapM
  if (one.kind === 'piece-short') return one.neededM - one.lengthM
  if (one.kind === 'bearing-short') return one.neededM - one.bearingM
  if (one.kind === 'joint-out-of-range') return Math.max(one.minM - one.widthM, one.widthM - one.maxM)
  return 0
}

const isHead = (kind: LayoutFinding['kind']): boolean =>
  kind === 'bearing-short' ||
  kind === 'lintel-end' ||
  kind === 'pillar-unbonded' ||
  kind === 'corbel-too-far' ||
  kind === 'arch-joint' ||
  kind === 'arch-rise'

/** A wall that would not stand or cannot be built is a problem; a bond that is less than the best is to be weighed. */
const levelOf = ({ kind }: LayoutFinding): Finding['level'] =>
  kind === 'lintel-end' ? 'good' : isCaution(kind) ? 'caution' : 'problem'

const isCaution = (kind: LayoutFinding['kind']): boolean =>
  kind === 'pillar-unbonded' ||
  kind === 'lap-short' ||
  kind === 'piece-short' ||
  kind === 'joint-out-of-range' ||
  kind === 'bond-unsuitable' ||
  kind === 'arch-joint'

const middleOf = (courses: Layout['courses'], index: number): number => {
  const course = courses.find((one) => one.index === index)
  return course === undefined ? 0 : (course.zBottomM + course.zTopM) / 2
}

function argsOf(one: LayoutFinding): Finding['args'] {
  const place =
    'wall' in one ? { wall: `wall.${one.wall}`, course: one.courses[0] ?? 1, courses: one.courses.length } : {}
  switch (one.kind) {
    case 'lap-short':
      return { ...place, lap: metres(one.lapM), needed: metres(one.neededM) }
    case 'piece-short':
      return { ...place, length: metres(one.lengthM), needed: metres(one.neededM) }
    case 'joint-out-of-range':
      return { ...place, width: metres(one.widthM), least: metres(one.minM), most: metres(one.maxM) }
    case 'lintel-end':
      return { ...place, deep: one.deepCourses }
    case 'pillar-unbonded':
      return {
        pillar: metres(one.pillarM),
        least: metres(one.leastM),
        ...(one.mostM !== null && { most: metres(one.mostM) }),
        isGap: one.mostM === null ? 'no' : 'yes',
      }
    case 'bearing-short':
      return { ...place, bearing: metres(one.bearingM), needed: metres(one.neededM) }
    case 'opening-too-wide':
      return { width: metres(one.widthM), widest: metres(one.widestM) }
    case 'head-above-wall':
      return { needed: one.neededCourses, available: one.availableCourses }
    case 'head-needs-brick':
      return {}
    case 'corbel-too-far':
      return { projection: metres(one.projectionM), limit: metres(one.limitM) }
    case 'arch-joint':
      return { soffit: metres(one.soffitM), back: metres(one.backM), least: metres(one.minM), most: metres(one.maxM) }
    case 'arch-rise':
      return { rise: metres(one.riseM), least: metres(one.minM), most: metres(one.maxM) }
    case 'bond-unsuitable':
      return { bond: `bond.${one.bond}`, laidAs: `bond.${one.laidAs}` }
    default:
      return one satisfies never
  }
}

function remedyOf(remedy: LayoutRemedy): Remedy {
  switch (remedy.kind) {
    case 'clear-side':
      return {
        kind: 'layout.clear-side',
        args: { side: metres(remedy.clearSideM) },
        set: { 'chambers.clearSideM': remedy.clearSideM },
      }
    case 'opening-width':
      return {
        kind: 'layout.opening-width',
        args: { width: metres(remedy.widthM) },
        set: { 'openings.widthM': remedy.widthM },
      }
    case 'bond':
      return {
        kind: 'layout.bond',
        args: { bond: `bond.${remedy.bond}` },
        set: { 'walls.bond': remedy.bond, 'walls.leaf': remedy.leaf },
      }
    default:
      return remedy satisfies never
  }
}
