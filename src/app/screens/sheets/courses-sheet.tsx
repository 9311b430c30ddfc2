import { courseView } from '../../../core/documents/drawings/course-view.ts'
import { frontView } from '../../../core/documents/drawings/front-view.ts'
import type { LaidCourse } from '../../../core/layout/contract.ts'
import type { PaperSheet } from '../../state/paper-actions.ts'
import { PaperDrawing } from './PaperDrawing.tsx'
import type { SheetHand } from './sheet-kind.ts'

/** Half a page is 320 units of the drawing wide; where a unit's width is fewer than a figure's height there, each course takes the whole page. */
const HALF_PAGE = 320
const FIGURE = 20

/** Every course from above with its units counted and its cuts dimensioned, and the front that they make. */
export function coursesSheet(hand: SheetHand): PaperSheet {
  const { worked, words, ink } = hand
  const { layout, plan } = worked
  const unitU = (HALF_PAGE * plan.walls.unit.widthM) / worked.geometry.outsideLength.value
  const across = unitU < FIGURE ? 1 : 2
  const widthU = across === 1 ? 2 * HALF_PAGE : HALF_PAGE
  const front = ink(<PaperDrawing drawing={frontView(worked, layout, [])} widthU={2 * HALF_PAGE} />)
  return {
    title: words.say('sheets.courses'),
    blocks: [
      { kind: 'text', text: words.say('sheets.courses-intro', { unit: plan.show.length }) },
      {
        kind: 'drawings',
        across,
        each: layout.courses.map((course) => ({
          caption: courseCaption(course, hand),
          markup: ink(
            <PaperDrawing drawing={courseView(layout, plan.walls.unit.cells, course.index)} widthU={widthU} />,
          ),
        })),
      },
      { kind: 'drawing', markup: front, mostHighMm: 110, caption: words.say('sheets.front') },
      { kind: 'caution', text: words.say('task-caution.dust') },
      { kind: 'caution', text: words.say('task-caution.lintel') },
    ],
  }
}

/** `Course 3, top at +135 mm: 15 units, 9 whole, 4 of 360, 2 of 155 mm`. */
function courseCaption(course: LaidCourse, { worked, words }: SheetHand): string {
  const units = worked.layout.units.slice(course.firstUnit, course.endUnit)
  const cuts = new Map<number, number>()
  for (const { cutLengthM } of units) if (cutLengthM !== null) cuts.set(cutLengthM, (cuts.get(cutLengthM) ?? 0) + 1)
  const whole = units.filter(({ cutLengthM }) => cutLengthM === null).length
  const parts = [
    words.say('sheets.whole', { count: whole }),
    ...[...cuts]
      .toSorted(([a], [b]) => b - a)
      .map(([lengthM, count]) =>
        words.say('sheets.cuts-of', { count: words.number(count), length: words.length(lengthM) }),
      ),
  ]
  return words.say('sheets.course-line', {
    course: words.number(course.index),
    level: words.length(course.zTopM),
    count: units.length,
    parts: parts.join(', '),
  })
}
