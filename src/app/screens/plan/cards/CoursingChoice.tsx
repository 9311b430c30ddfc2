import type { WorkedOut } from '../../../../core/work-out.ts'
import { Picks } from '../../../parts/Picks.tsx'
import { useWords } from '../../../words/use-words.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'

/** Ways to meet the levels in whole courses with one joint; the first is the best by how little it moves. */
export function CoursingChoice({ coursing }: { readonly coursing: WorkedOut['coursing'] }) {
  const { say, length } = useWords()
  const { set } = usePlan()
  const { choices, choice } = coursing
  if (choices.length < 2) return null
  const nameOf = (index: number) => String(index)
  return (
    <Picks
      name={say('walls.coursing')}
      choices={choices.slice(0, 6).map(({ plan, reached }, index) => ({
        key: nameOf(index),
        title: say('walls.coursing-line', {
          below: plan.sillCourses,
          above: plan.count - plan.sillCourses,
          joint: length(plan.bedM),
        }),
        detail: say('walls.coursing-why', {
          above: length(reached.aboveM),
          below: length(reached.belowM),
          head: length(reached.headM),
        }),
      }))}
      chosen={nameOf(choices.indexOf(choice))}
      onChoose={(key) => {
        const chosen = choices[Number(key)]
        if (chosen === undefined) return
        const { plan } = chosen
        set({
          'walls.coursing':
            key === '0' ? null : { below: plan.sillCourses, above: plan.count - plan.sillCourses, jointM: plan.bedM },
        })
      }}
    />
  )
}
