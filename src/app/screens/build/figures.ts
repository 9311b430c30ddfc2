import type { Derived } from '../../../core/basics/derived.ts'
import type { TaskKind } from '../../../core/schedule/tasks.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { say } from '../../words/catalogue.ts'
import type { Words } from '../../words/words.ts'

export interface StepFigure {
  readonly label: string
  readonly of: Derived
}

/** The numbers one needs in hand for a step. */
export function figuresOf(kind: TaskKind, { geometry, needs, tray }: WorkedOut): readonly StepFigure[] {
  const { footing, earthworks } = geometry
  switch (kind) {
    case 'set-out':
      return [
        { label: say('build.length'), of: geometry.outsideLength },
        { label: say('build.depth'), of: geometry.outsideDepth },
        { label: say('build.diagonal'), of: geometry.diagonal },
      ]
    case 'dig':
      return [
        { label: say('build.dig-depth'), of: footing.depth },
        { label: say('build.dig-volume'), of: earthworks.dig },
        { label: say('build.heap'), of: earthworks.loose },
        { label: say('build.pans-away'), of: earthworks.surplusPans },
        { label: say('build.barrows-away'), of: earthworks.surplusBarrows },
      ]
    case 'footing':
      return [
        { label: say('build.pour-thickness'), of: footing.thickness },
        { label: say('build.pour-volume'), of: footing.concrete },
      ]
    case 'walls-below':
      return [{ label: say('build.wall-below'), of: geometry.wallBelow }]
    case 'walls':
      return needs
        .filter(({ item, use }) => item === 'wall-unit' && use === 'walls')
        .map(({ net }) => ({ label: say('build.units'), of: net }))
    case 'fill':
      return needs
        .filter(({ use }) => use === 'fill')
        .map(({ gross }) => ({ label: say('build.fill-volume'), of: gross }))
    case 'trays':
      return [
        { label: say('build.trays-count'), of: tray.count },
        { label: say('build.trays-side'), of: tray.side },
      ]
    case 'backfill':
      return [{ label: say('build.backfill-volume'), of: earthworks.backfill }]
    case 'cast-lintels':
    case 'lintel-wait':
    case 'footing-wait':
    case 'lift-wait':
    case 'heads':
    case 'slabs':
    case 'faces':
    case 'curing':
    case 'first-fires':
      return []
    default:
      return kind satisfies never
  }
}

/** What to do, in a line; null where the figures say it. */
export function lineOf(kind: TaskKind, { plan, coursing }: WorkedOut, { named, length, number }: Words): string | null {
  const { plan: courses } = coursing.choice
  switch (kind) {
    case 'set-out':
      return say('build.peg-line')
    case 'dig':
      return say('build.dig-line')
    case 'footing':
      return say('build.pour-line', {
        cement: number(plan.mixes.concrete.cement),
        sand: number(plan.mixes.concrete.sand),
        stone: number(plan.mixes.concrete.stone),
      })
    case 'walls-below':
      return say('build.courses-line', { count: courses.sillCourses, joint: length(courses.bedM) })
    case 'walls':
      return say('build.courses-line', { count: courses.count - courses.sillCourses, joint: length(courses.bedM) })
    case 'heads':
    case 'cast-lintels':
      return say('build.heads-line', {
        course: courses.headCourses,
        head: named(`head.${plan.openings.head}`).toLocaleLowerCase(),
        width: length(plan.openings.widthM),
      })
    case 'fill':
      return say('build.fill-line')
    case 'first-fires':
      return say('build.fire-line')
    case 'footing-wait':
    case 'lintel-wait':
      return say('build.wait-line')
    case 'backfill':
    case 'lift-wait':
    case 'slabs':
    case 'faces':
    case 'curing':
    case 'trays':
      return null
    default:
      return kind satisfies never
  }
}
