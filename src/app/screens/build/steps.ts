import { counted, type Derived } from '../../../core/basics/derived.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { say } from '../../words/catalogue.ts'
import type { Words } from '../../words/words.ts'

const STEPS = ['peg', 'dig', 'pour', 'wait', 'below', 'above', 'heads', 'fill', 'trays', 'fire'] as const
export type BuildStep = (typeof STEPS)[number]

/** Steps of this kiln, in order; filling only where there are hollows to fill. */
export const stepsOf = ({ plan, layout }: WorkedOut): readonly BuildStep[] =>
  STEPS.filter((step) => step !== 'fill' || (plan.walls.fill !== 'none' && layout.fillableVoidM3 > 0))

interface StepFigure {
  readonly label: string
  readonly of: Derived
}

export function figuresOf(step: BuildStep, { geometry, coursing, needs, tray }: WorkedOut): readonly StepFigure[] {
  const { footing, earthworks } = geometry
  const { plan: courses } = coursing.choice
  switch (step) {
    case 'peg':
      return [
        { label: say('build.length'), of: geometry.outsideLength },
        { label: say('build.depth'), of: geometry.outsideDepth },
        { label: say('build.diagonal'), of: geometry.diagonal },
      ]
    case 'dig':
      return [
        { label: say('build.dig-depth'), of: footing.depth },
        { label: say('build.dig-volume'), of: earthworks.dig },
      ]
    case 'pour':
      return [{ label: say('build.pour-volume'), of: footing.concrete }]
    case 'below':
      return [
        { label: say('build.courses'), of: counted('course-count-below', 'piece', courses.sillCourses) },
        { label: say('build.joint'), of: counted('course-joint', 'm', courses.bedM) },
      ]
    case 'above':
      return [
        {
          label: say('build.courses'),
          of: counted('course-count-above', 'piece', courses.count - courses.sillCourses),
        },
        { label: say('build.joint'), of: counted('course-joint', 'm', courses.bedM) },
        ...needs.filter(({ item }) => item === 'wall-unit').map(({ net }) => ({ label: say('build.units'), of: net })),
      ]
    case 'fill':
      return needs.filter(({ use }) => use === 'fill').map(({ gross }) => ({ label: say('build.fill'), of: gross }))
    case 'trays':
      return [
        { label: say('build.trays-count'), of: tray.count },
        { label: say('build.trays-side'), of: tray.side },
      ]
    case 'wait':
    case 'heads':
    case 'fire':
      return []
    default:
      return step satisfies never
  }
}

/** What to do, in a line; null where the figures say it. */
export function lineOf(
  step: BuildStep,
  { plan, geometry, coursing }: WorkedOut,
  { named, length }: Words,
): string | null {
  switch (step) {
    case 'peg':
      return say('build.peg-line', {
        length: length(geometry.outsideLength.value),
        depth: length(geometry.outsideDepth.value),
      })
    case 'dig':
      return say('build.dig-line')
    case 'pour':
      return say('build.pour-line', {
        sand: plan.mixes.concrete.sand,
        stone: plan.mixes.concrete.stone,
        thickness: length(plan.ground.thicknessM),
      })
    case 'wait':
      return say('build.wait-line')
    case 'heads':
      return say('build.heads-line', {
        course: coursing.choice.plan.headCourses,
        head: named(`head.${plan.openings.head}`).toLocaleLowerCase(),
        width: length(plan.openings.widthM),
      })
    case 'fill':
      return say('build.fill-line')
    case 'fire':
      return say('build.fire-line')
    case 'below':
    case 'above':
    case 'trays':
      return null
    default:
      return step satisfies never
  }
}

type Caution = 'cement' | 'dust' | 'heavy' | 'trench' | 'lintel' | 'fire'

/** Heavier units are not lifted by one person again and again (HSE, Construction Information Sheet 37). */
const HEAVY_KG = 20

/** Where work can hurt someone, the caution stands at the work. */
export function cautionsOf(step: BuildStep, { plan, layout }: WorkedOut): readonly Caution[] {
  switch (step) {
    case 'dig':
      return ['trench']
    case 'pour':
      return ['cement']
    case 'below':
    case 'above': {
      const { lengthM, widthM, heightM, voidFraction, densityKgM3 } = plan.walls.unit
      const isHeavy = lengthM * widthM * heightM * (1 - voidFraction) * densityKgM3 > HEAVY_KG
      return [
        ...(plan.mixes.mortar.cement > 0 ? (['cement'] as const) : []),
        ...(layout.counts.cutPieces > 0 ? (['dust'] as const) : []),
        ...(isHeavy ? (['heavy'] as const) : []),
      ]
    }
    case 'heads':
      return ['lintel']
    case 'fire':
      return ['fire']
    case 'peg':
    case 'wait':
    case 'fill':
    case 'trays':
      return []
    default:
      return step satisfies never
  }
}
