import { lazy, Suspense, useMemo, useState } from 'react'
import type { WorkedOut } from '../../../core/work-out.ts'
import { KilnDrawing, type View } from '../../drawings/KilnDrawing.tsx'
import { DrawingFrame } from '../../parts/DrawingFrame.tsx'
import { LinkButton } from '../../parts/Button.tsx'
import { DecisionLine } from '../../parts/DecisionLine.tsx'
import { Segments } from '../../parts/Picks.tsx'
import { useWide } from '../../parts/use-wide.ts'
import { useWords } from '../../words/use-words.tsx'
import { CompareSheet } from '../compare/CompareSheet.tsx'
import { PlanPicture } from '../pictures/PlanPicture.tsx'
import type { PlanRoute } from '../PlanHere.tsx'
import { cardHref } from '../route.ts'
import { KeyFigure } from '../working/Worked.tsx'
import { answerTo } from './answers.ts'
import { CardSheet } from './CardSheet.tsx'
import { PLAN_CARDS, isPlanCard } from './cards.ts'
import { Findings } from './Findings.tsx'
import { MoneyFigure } from './MoneyFigure.tsx'
import { worstFirst } from './order-findings.ts'
import './plan.css'
import { FindingsAloud, TotalAloud } from './Aloud.tsx'

const VIEWS = ['plan', 'front', 'section', 'inside'] as const

// Seen only by who asks for them: loaded then, from this phone.
const InsideDrawing = lazy(() =>
  import('../../drawings/InsideDrawing.tsx').then(({ InsideDrawing: shown }) => ({ default: shown })),
)
const DrawingViewer = lazy(() =>
  import('../../drawings/DrawingViewer.tsx').then(({ DrawingViewer: shown }) => ({ default: shown })),
)

const CuttingSheet = lazy(() => import('../cutting/CuttingSheet.tsx').then((one) => ({ default: one.CuttingSheet })))
const RepairSheet = lazy(() => import('../cutting/RepairSheet.tsx').then((one) => ({ default: one.RepairSheet })))

function OneView({
  view,
  worked,
  findings,
  onOpen,
}: {
  readonly view: View | 'inside'
  readonly worked: WorkedOut
  readonly findings: WorkedOut['findings']
  readonly onOpen: () => void
}) {
  if (view !== 'inside') return <KilnDrawing view={view} worked={worked} findings={findings} onOpen={onOpen} />
  return (
    <Suspense fallback={<DrawingFrame>{null}</DrawingFrame>}>
      <InsideDrawing worked={worked} findings={findings} onOpen={onOpen} />
    </Suspense>
  )
}

/** Plan: the drawing on top, what to know under it, then every decision with its present answer. */
export function PlanPlace({ route, worked }: { readonly route: PlanRoute; readonly worked: WorkedOut }) {
  const words = useWords()
  const { say, named } = words
  const [view, setView] = useState<View | 'inside'>('plan')
  const isWide = useWide()
  const [opened, setOpened] = useState<View | 'inside' | null>(null)
  const findings = useMemo(() => worstFirst(worked.findings), [worked.findings])
  const { plan, fish, costs } = worked
  const units = worked.needs.find(({ item }) => item === 'wall-unit')
  return (
    <>
      {plan.example && <p className="quiet example-line">{say('app.example')}</p>}
      <div className="split">
        <section className="look stack" aria-label={say('plan.drawings')}>
          {isWide ? (
            <div className="all-views">
              {VIEWS.map((one) => (
                <OneView
                  key={one}
                  view={one}
                  worked={worked}
                  findings={findings}
                  onOpen={() => {
                    setOpened(one)
                  }}
                />
              ))}
            </div>
          ) : (
            <>
              <OneView
                view={view}
                worked={worked}
                findings={findings}
                onOpen={() => {
                  setOpened(view)
                }}
              />
              <Segments
                name={say('plan.drawings')}
                choices={VIEWS.map((key) => ({ key, label: say(`plan.view.${key}`) }))}
                chosen={view}
                onChoose={setView}
              />
            </>
          )}
          <div className="figs">
            <KeyFigure label={say('plan.fish')} of={fish.freshPerDay} />
            {units && <KeyFigure label={named(`plan.units.${plan.walls.unit.family}`)} of={units.net} />}
            <MoneyFigure costs={costs} planId={route.id} />
          </div>
          <TotalAloud costs={costs} />
          <FindingsAloud findings={findings} />
        </section>
        <section className="stack">
          <h2 className="hide">{say('plan.findings')}</h2>
          {findings.length > 0 ? (
            <Findings findings={findings} isShort />
          ) : (
            <p className="quiet">{say('plan.no-findings')}</p>
          )}
          <h2 className="hide">{say('plan.decisions')}</h2>
          <div>
            {PLAN_CARDS.map((card) => (
              <DecisionLine
                key={card}
                name={say(`card.${card}`)}
                answer={answerTo(card, worked, words)}
                picture={<PlanPicture card={card} plan={plan} />}
                href={cardHref(route.id, 'plan', card)}
              />
            ))}
          </div>
          <LinkButton href={cardHref(route.id, 'plan', 'compare')} shape="big">
            {say('compare.title')}
          </LinkButton>
          <LinkButton href={cardHref(route.id, 'plan', 'within')} shape="big">
            {say('within.title')}
          </LinkButton>
        </section>
      </div>
      {route.card === 'compare' && <CompareSheet route={route} worked={worked} />}
      {(route.card === 'cutting' || route.card === 'repair') && (
        <Suspense fallback={null}>
          {route.card === 'cutting' ? (
            <CuttingSheet route={route} worked={worked} />
          ) : (
            <RepairSheet route={route} worked={worked} />
          )}
        </Suspense>
      )}
      {opened !== null && (
        <Suspense fallback={null}>
          <DrawingViewer
            worked={worked}
            findings={findings}
            start={opened}
            onClose={() => {
              setOpened(null)
            }}
          />
        </Suspense>
      )}
      {isPlanCard(route.card) && (
        <CardSheet key={route.card} card={route.card} route={route} worked={worked} findings={findings} />
      )}
    </>
  )
}
