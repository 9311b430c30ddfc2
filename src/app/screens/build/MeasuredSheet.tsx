import { useState } from 'react'
import { courseKey, type RisenCourse } from '../../../core/layout/as-built.ts'
import { Button } from '../../parts/Button.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { Slider } from '../../parts/Slider.tsx'
import { WideTable } from '../../parts/WideTable.tsx'
import { useWords } from '../../words/use-words.tsx'
import { fieldWay } from '../fields/field-way.ts'
import { usePlan } from '../fields/plan-in-hand.ts'
import { NumberField } from '../fields/PlanField.tsx'
import { Findings } from '../plan/Findings.tsx'
import { BrokenUnits } from './BrokenUnits.tsx'
import { levelText } from './level-text.ts'
import { courseToLay } from './next-work.ts'
import type { SiteSheetProps } from './site-sheet-props.ts'
import { SunTool } from './SunTool.tsx'
import { useTick } from './use-tick.ts'

/** As built: where the courses truly came, and the joints that bring the rest to the top. */
export function MeasuredSheet({ worked, onClose, field }: SiteSheetProps) {
  const words = useWords()
  const { say, length } = words
  const { plan, set } = usePlan()
  const tick = useTick()
  const { courses } = worked.asBuilt
  const [at, setAt] = useState(() => {
    const asked = courses.findIndex(({ index }) => courseKey(index) === field)
    return asked >= 0 ? asked : firstAsked(worked)
  })
  const course = courses[at]
  if (course === undefined) return null
  const below = courses[at - 1]?.topM ?? course.topM - course.bedM - plan.walls.unit.heightM
  const measured = plan.built.risen[courseKey(course.index)]
  const topM = measured?.topM ?? course.topM
  const put = (nextM: number) => set({ [`built.risen.${courseKey(course.index)}`]: { topM: nextM, ...tick() } })
  const text = say('build.course', { course: course.index, level: levelText(topM, words) })
  return (
    <Sheet
      title={say('build.open.measured')}
      closeLabel={say('app.close')}
      onClose={onClose}
      height="full"
      tools={<SunTool />}
    >
      <p>{say('build.measured-how')}</p>
      <Findings findings={worked.findings} only={({ kind }) => kind.startsWith('built.')} />
      <h2 className="site-title">{text}</h2>
      <Slider
        name={say('build.course-slider')}
        value={at}
        min={0}
        max={courses.length - 1}
        text={text}
        less={say('build.course-below')}
        more={say('build.course-above')}
        onChange={setAt}
      />
      <div className="fields">
        <NumberField
          id="built.topM"
          name={say('build.real-top')}
          value={topM}
          way={fieldWay('built.topM', words)}
          onChange={put}
          help={say('build.planned-top', { level: levelText(course.plannedTopM, words) })}
        />
        <NumberField
          id="built.joint"
          name={say('build.real-joint')}
          value={topM - below - plan.walls.unit.heightM}
          way={fieldWay('walls.joint.maxM', words)}
          limit={{ min: -0.5, max: 0.5, unit: 'm', step: 0.001 }}
          onChange={(bedM) => {
            put(below + bedM + plan.walls.unit.heightM)
          }}
        />
      </div>
      <div className="ways">
        {measured === undefined ? (
          <Button
            shape="big"
            icon="tick"
            onPress={() => {
              put(course.topM)
            }}
          >
            {say('build.as-planned', { level: levelText(course.topM, words) })}
          </Button>
        ) : (
          <Button
            shape="big"
            icon="undo"
            onPress={() => {
              set({ [`built.risen.${courseKey(course.index)}`]: undefined })
            }}
          >
            {say('build.forget-level')}
          </Button>
        )}
      </div>
      <WideTable name={say('build.open.measured')}>
        <table className="site-table">
          <caption className="hide">{say('build.open.measured')}</caption>
          <thead>
            <tr>
              <th scope="col">{say('build.course-slider')}</th>
              <th scope="col">{say('build.planned')}</th>
              <th scope="col">{say('build.now-at')}</th>
              <th scope="col">{say('build.joint')}</th>
            </tr>
          </thead>
          <tbody>
            {courses.toReversed().map((one) => (
              <tr key={one.index} className={lookOf(one)}>
                <th scope="row">{one.index}</th>
                <td>{levelText(one.plannedTopM, words)}</td>
                <td>{levelText(one.topM, words)}</td>
                <td>{length(one.bedM)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </WideTable>
      <p className="quiet">{say('build.measured-key')}</p>
      <BrokenUnits worked={worked} />
    </Sheet>
  )
}

const lookOf = ({ known }: RisenCourse): string =>
  known === 'measured' ? 'is-measured' : known === 'between' ? 'is-between' : ''

/** The course under the one in hand: it was just finished. */
function firstAsked(worked: SiteSheetProps['worked']): number {
  const open = courseToLay(worked)
  const { courses } = worked.asBuilt
  if (open === null) return courses.length - 1
  return Math.max(0, courses.findIndex(({ index }) => index === open.index) - 1)
}
