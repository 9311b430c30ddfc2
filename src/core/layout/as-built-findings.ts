import type { Finding } from '../basics/finding.ts'
import { MISSED_M, type AsBuilt } from './as-built.ts'
import type { CoursePlan, JointRange } from './contract.ts'

const metres = (value: number) => ({ value, unit: 'm' as const })

/** What the measured levels mean for the rest: a level that cannot be, joints out of their range, a head or a top that will be missed. */
export function asBuiltFindings(built: AsBuilt, plan: CoursePlan, joint: JointRange): Finding[] {
  if (built.measuredTo === 0) return []
  const findings: Finding[] = []
  const tell = (level: Finding['level'], kind: string, args: Finding['args']) =>
    findings.push({ level, kind: `built.${kind}`, args, card: 'build', remedies: [] })
  const stands = built.courses.filter(({ known }) => known !== 'ahead')
  const impossible = stands.find(({ bedM }) => bedM < -MISSED_M)
  if (impossible !== undefined) {
    tell('problem', 'level-impossible', { course: impossible.index, by: metres(-impossible.bedM) })
    return findings
  }
  const worst = stands
    .map((course) => ({ ...course, outM: Math.max(joint.minM - course.bedM, course.bedM - joint.maxM) }))
    .reduce<{ index: number; bedM: number; outM: number } | null>(
      (most, one) => (one.outM > MISSED_M && one.outM > (most?.outM ?? 0) ? one : most),
      null,
    )
  if (worst !== null)
    tell('caution', 'joint-out', {
      course: worst.index,
      joint: metres(worst.bedM),
      least: metres(joint.minM),
      most: metres(joint.maxM),
    })
  const { offHeadM, offTopM, other, measuredTo } = built
  const left = plan.count - measuredTo
  if (Math.abs(offTopM) >= MISSED_M) {
    const args = { by: metres(Math.abs(offTopM)), way: offTopM > 0 ? 'high' : 'low' }
    if (left === 0) tell('caution', 'top-stands', args)
    else if (other === null) tell('problem', 'top-missed', { ...args, courses: left })
    else tell('problem', 'top-other-count', { ...args, courses: other.courses, joint: metres(other.bedM) })
  }
  if (Math.abs(offHeadM) >= MISSED_M)
    tell('caution', measuredTo >= plan.headCourses ? 'head-stands' : 'head-missed', {
      by: metres(Math.abs(offHeadM)),
      way: offHeadM > 0 ? 'high' : 'low',
    })
  if (findings.length === 0 && left > 0) {
    const next = built.courses[measuredTo]
    if (next !== undefined && Math.abs(next.bedM - plan.bedM) >= 5e-4)
      tell('good', 'rest-meets-top', { courses: left, joint: metres(next.bedM) })
  }
  return findings
}
