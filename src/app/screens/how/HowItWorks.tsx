import { useMemo, type ReactNode } from 'react'
import { frontView } from '../../../core/documents/drawings/front-view.ts'
import { insideView } from '../../../core/documents/drawings/inside-view.ts'
import { airView, turningView } from '../../../core/documents/drawings/shown-view.ts'
import { traySeatView } from '../../../core/documents/drawings/tray-view.ts'
import { wallLayersView } from '../../../core/documents/drawings/wall-layers-view.ts'
import { firingTime, firingTimetable } from '../../../core/fish/timetable.ts'
import { FiringDay } from '../../drawings/FiringDay.tsx'
import { LinkButton } from '../../parts/Button.tsx'
import { DrawingFrame } from '../../parts/DrawingFrame.tsx'
import { showHours } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import { Caution } from '../build/Caution.tsx'
import { FrontBranch } from '../FrontBranch.tsx'
import { HOW, TRADE_WORDS } from '../route.ts'
import { Marked } from '../terms/Marked.tsx'
import { sampleKiln } from './sample-kiln.ts'
import { ShownDrawing } from './ShownDrawing.tsx'

const PARTS = ['kiln', 'air', 'fire', 'seat', 'turn', 'dry', 'walls'] as const
type Part = (typeof PARTS)[number]

/** The cautions that belong to a part, where one meets what is dangerous. */
const CAUTIONS: Partial<Record<Part, readonly string[]>> = {
  air: ['run.caution.air'],
  fire: ['run.caution.wood', 'run.caution.store'],
  turn: ['run.caution.burns'],
  dry: ['run.caution.food', 'run.caution.local'],
}

/** How a kiln works, in seven pictures of one. */
export function HowItWorks() {
  const { say, named } = useWords()
  return (
    <FrontBranch path={HOW} title={say('front.how')}>
      {PARTS.map((part) => (
        <section key={part} className="stack">
          <h2>{named(`help.${part}.title`)}</h2>
          <DrawingFrame>
            <PartDrawn part={part} />
          </DrawingFrame>
          <p>
            <Marked text={named(`help.${part}.text`)} />
          </p>
          {CAUTIONS[part]?.map((caution) => (
            <Caution key={caution}>{named(caution)}</Caution>
          ))}
        </section>
      ))}
      <LinkButton href={TRADE_WORDS} shape="big" icon="words">
        {say('front.terms')}
      </LinkButton>
    </FrontBranch>
  )
}

function PartDrawn({ part }: { readonly part: Part }): ReactNode {
  const { say, inLine } = useWords()
  const kiln = sampleKiln()
  const drawing = useMemo(() => {
    switch (part) {
      case 'kiln':
        return insideView(kiln, kiln.layout, [])
      case 'air':
        return airView(kiln, kiln.layout)
      case 'fire':
        return frontView(kiln, kiln.layout, [])
      case 'seat':
        return traySeatView(kiln)
      case 'turn':
        return turningView(kiln)
      case 'walls':
        return wallLayersView(kiln)
      case 'dry':
        return null
      default:
        return part satisfies never
    }
  }, [part, kiln])
  if (drawing !== null) return <ShownDrawing drawing={drawing} />
  return (
    <FiringDay
      steps={firingTimetable(kiln.plan)}
      label={say('run.day-told', { hours: inLine(firingTime(kiln.plan).value, 'h') })}
      hourText={showHours}
      names={{ cook: say('run.day.cook'), dry: say('run.day.dry') }}
    />
  )
}
