import { piecesOf } from '../../../core/layout/pieces-to-lay.ts'
import type { Step } from '../../../core/schedule/schedule.ts'
import { coursesOf } from '../../../core/schedule/site-work.ts'
import { stepMaterials } from '../../../core/schedule/step-materials.ts'
import type { WorkedOut } from '../../../core/work-out.ts'
import { useWords } from '../../words/use-words.tsx'
import { Worked } from '../working/Worked.tsx'
import { piecesText } from './pieces-text.ts'

/** What to have at hand for a step. */
export function StepMaterials({ step, worked }: { readonly step: Step; readonly worked: WorkedOut }) {
  const words = useWords()
  const { layout, needs, plan, schedule } = worked
  const materials = stepMaterials(step, schedule.steps, layout, needs)
  const courses = coursesOf(step, schedule.steps, layout)
  if (materials.length === 0) return null
  return (
    <section>
      <h3>{words.say('build.materials')}</h3>
      <ul>
        {materials.map(({ item, amount }) => (
          <li key={item} className="lead">
            <span>{words.named(`item.${item}`)}</span>
            <Worked of={amount} label={words.named(`item.${item}`)} />
          </li>
        ))}
      </ul>
      {courses.length > 0 && (
        <p className="quiet">
          {piecesText(
            piecesOf(
              layout,
              courses.map((course) => ({ course })),
              plan.walls.unit,
              plan.walls.cutLossM,
            ),
            words,
          )}
        </p>
      )}
    </section>
  )
}
