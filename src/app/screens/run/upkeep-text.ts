import type { UpkeepDue } from '../../../core/schedule/upkeep.ts'
import { showIsoDay } from '../../words/dates.ts'
import type { Words } from '../../words/words.ts'

/** When a part wants looking at, and what stands open on it. */
export function dueText({ dueDay, late, bad }: UpkeepDue, { say }: Words): string {
  const when =
    dueDay === null || late === null
      ? say('run.due-unknown')
      : late > 0
        ? say('run.late', { day: showIsoDay(dueDay), count: late })
        : late === 0
          ? say('run.due-today')
          : say('run.due', { day: showIsoDay(dueDay) })
  return bad === 0 ? when : `${when}. ${say('run.open-faults', { count: bad })}`
}
