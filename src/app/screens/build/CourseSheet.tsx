import { useDeferredValue, useMemo, useState } from 'react'
import { courseKey } from '../../../core/layout/as-built.ts'
import type { LaidCourse } from '../../../core/layout/contract.ts'
import { piecesOf } from '../../../core/layout/pieces-to-lay.ts'
import { besideTheWall } from '../../../core/schedule/beside-the-wall.ts'
import { liesOf } from '../../../core/schedule/site-work.ts'
import { Button, LinkButton } from '../../parts/Button.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { useWords } from '../../words/use-words.tsx'
import { usePlan } from '../fields/plan-in-hand.ts'
import { cardHref } from '../route.ts'
import { Caution } from './Caution.tsx'
import { CoursePicture } from './CoursePicture.tsx'
import { courseReminders } from './course-reminders.ts'
import { levelText } from './level-text.ts'
import { MiniRise } from './MiniRise.tsx'
import { courseToLay, laidFields } from './next-work.ts'
import { besideText, cutsText } from './pieces-text.ts'
import { ReadAloud } from './ReadAloud.tsx'
import type { SiteSheetProps } from './site-sheet-props.ts'
import { StepDock } from './StepDock.tsx'
import { SunTool } from './SunTool.tsx'
import { useFromTheTop } from './use-from-the-top.ts'
import { useLaid } from './use-laid.ts'
import { useStayAwake } from './use-stay-awake.ts'
import { useSwipe } from './use-swipe.ts'
import { useTick } from './use-tick.ts'

/** Course mode: one course a screen, read at arm's length, ticked unit by unit with a thumb. */
export function CourseSheet({ planId, worked, onClose }: SiteSheetProps) {
  useStayAwake()
  const words = useWords()
  const { say, named } = words
  const { plan, set } = usePlan()
  const tick = useTick()
  const { layout, schedule, asBuilt } = worked
  const { courses } = layout
  const [at, setAt] = useState(() => {
    const open = courseToLay(worked)
    return open === null ? courses.length - 1 : courses.indexOf(open)
  })
  const go = (by: 1 | -1) => {
    setAt((now) => Math.max(0, Math.min(courses.length - 1, now + by)))
  }
  const swipe = useSwipe(go)
  const inside = useFromTheTop(at)
  const course = courses[at]
  const lies = (one: LaidCourse) => liesOf(one, schedule.steps, plan)
  const { ahead, lay } = useLaid((one, units) => {
    set(laidFields({ ...worked, plan }, one, units, tick()))
  })
  const laid = course === undefined ? 0 : ahead?.course === course ? ahead.units : lies(course)
  const drawn = useDeferredValue(course)
  const drawnLaid = useDeferredValue(laid)
  const pieces = useMemo(
    () => (course === undefined ? null : piecesOf(layout, [{ course }], plan.walls.unit, plan.walls.cutLossM)),
    [layout, course, plan.walls],
  )
  const today = useMemo(() => besideTheWall(worked.plan, layout, schedule), [worked.plan, layout, schedule])
  if (course === undefined || drawn === undefined || pieces === null) return null
  const count = course.endUnit - course.firstUnit
  const isLaid = laid >= count
  const next = isLaid ? undefined : layout.units[course.firstUnit + laid]
  const risen = asBuilt.courses.find(({ index }) => index === course.index)
  const topM = risen?.topM ?? course.zTopM
  const bedM = risen?.bedM ?? layout.joints.bedM
  const reminders = courseReminders(course, worked, words)
  const isLast = at === courses.length - 1
  const title = say('build.course-of', { course: course.index, count: courses.at(-1)?.index ?? courses.length })
  const joint = say('build.with-joint', { joint: words.length(bedM) })
  return (
    <Sheet
      title={title}
      closeLabel={say('app.close')}
      onClose={onClose}
      height="full"
      tools={<SunTool />}
      foot={
        <>
          <StepDock
            at={at}
            of={courses.length}
            less={say('build.course-below')}
            more={say('build.course-above')}
            onStep={go}
          >
            {isLaid ? (
              <Button
                tone="fire"
                disabled={isLast}
                onPress={() => {
                  go(1)
                }}
              >
                {isLast ? say('build.top-reached') : say('build.next-course', { course: courses[at + 1]?.index ?? 0 })}
              </Button>
            ) : (
              <Button tone="fire" onPress={() => lay(course, laid + 1)}>
                {say('build.lay-unit', { number: laid + 1 })}
              </Button>
            )}
          </StepDock>
          <div className="lay-less">
            <Button icon="undo" disabled={laid === 0} onPress={() => lay(course, laid - 1)}>
              {say('build.one-back')}
            </Button>
            <Button icon="tick" disabled={isLaid} onPress={() => lay(course, count)}>
              {say('build.whole-course')}
            </Button>
          </div>
        </>
      }
    >
      <div ref={inside} className="course-head" {...swipe}>
        <div className="course-count" aria-live="polite">
          <b className="far-figure">{words.number(count)}</b>
          <p>
            <b>{say('build.count-words', { whole: pieces.whole, cut: count - pieces.whole, halves: pieces.halves })}</b>
            <br />
            {joint}
          </p>
        </div>
        <MiniRise courses={courses} at={course} lies={(one) => (one === course ? laid : lies(one))} />
      </div>
      <div className="swipe-drawing" {...swipe}>
        <CoursePicture layout={layout} cells={plan.walls.unit.cells} course={drawn.index} laid={drawnLaid} />
      </div>
      <div className="course-boxes">
        <FigureBox name={say('build.top-at')} figure={levelText(topM, words)} />
        <FigureBox name={say('build.laid')} figure={words.number(laid)} />
        <FigureBox
          name={say('build.next', {
            kind: next === undefined ? 'none' : next.cutLengthM === null ? 'whole' : next.kind,
          })}
          figure={next === undefined ? '–' : words.figure(next.cutLengthM ?? plan.walls.unit.lengthM, 'm').figure}
        />
      </div>
      {reminders.map((text) => (
        <Caution key={text}>{text}</Caution>
      ))}
      {pieces.cuts.length > 0 && (
        <section>
          <h3>{say('build.cuts-here')}</h3>
          <p className="site-text">{cutsText(pieces, words)}</p>
        </section>
      )}
      {today.courses.length > 0 && (
        <section>
          <h3>{say('build.beside')}</h3>
          <p className="site-text">{besideText(today, words)}</p>
        </section>
      )}
      <div className="ways">
        {course.index >= 1 && (
          <LinkButton href={cardHref(planId, 'build', 'measured', courseKey(course.index))} shape="big" icon="level">
            {say('build.open.measured')}
          </LinkButton>
        )}
        <LinkButton href={cardHref(planId, 'build', 'batch', 'joints')} shape="big" icon="batch">
          {say('build.open.batch')}
        </LinkButton>
        <ReadAloud
          text={[
            title,
            `${String(count)} ${say('build.count-words', { whole: pieces.whole, cut: count - pieces.whole, halves: pieces.halves })}`,
            joint,
            `${say('build.top-at')} ${words.length(topM)}`,
            ...reminders,
            cutsText(pieces, words),
          ]
            .filter((one) => one !== '')
            .join('. ')}
        />
      </div>
      <Caution>{named('task-caution.dust')}</Caution>
      <Caution>{named('task-caution.cement')}</Caution>
    </Sheet>
  )
}

function FigureBox({ name, figure }: { readonly name: string; readonly figure: string }) {
  return (
    <p className="figure-box">
      <span>{name}</span>
      <b>{figure}</b>
    </p>
  )
}
