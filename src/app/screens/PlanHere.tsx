import { lazy, memo, Suspense, useCallback, useEffect, useEffectEvent, useMemo, useState } from 'react'
import type { PlanProblem } from '../../core/plan/parse-plan.ts'
import type { WorkedOut } from '../../core/work-out.ts'
import { WorkingContext } from '../drawings/working-context.ts'
import { Bar } from '../parts/Bar.tsx'
import { LinkButton } from '../parts/Button.tsx'
import { Header } from '../parts/Header.tsx'
import { Icon } from '../parts/Icon.tsx'
import { applySet, closePlan, editPlan, openPlan, redo, undo } from '../state/actions.ts'
import type { OpenPlan } from '../state/app-state.ts'
import { useApp } from '../state/use-app.ts'
import { useWorkedOut } from '../state/use-worked-out.ts'
import { useWords, WordsProvider } from '../words/use-words.tsx'
import { BuildPlace } from './build/BuildPlace.tsx'
import { BuyPlace } from './buy/BuyPlace.tsx'
import { DifferencesNotice } from './differences/DifferencesNotice.tsx'
import { PlanContext, PlanHandContext } from './fields/plan-in-hand.ts'
import { PlanTools } from './front/PlanTools.tsx'
import { KeepingNotice } from './KeepingNotice.tsx'
import { Page } from './Page.tsx'
import { homeOf } from './plan/cards.ts'
import { PlanPlace } from './plan/PlanPlace.tsx'
import { Hint } from './hints/Hint.tsx'
import { cardHref, FRONT, HOW, placeHref, PLACES, type Route } from './route.ts'
import { RunPlace } from './run/RunPlace.tsx'
import { officeText } from './settings/office-text.ts'
import { savingLine } from './saving-line.ts'
import { useNow } from './use-now.ts'
import { goTo } from './use-route.ts'
import { useWorking } from './working/use-working.ts'
import { WorkingSheet } from './working/WorkingSheet.tsx'

const DifferencesSheet = lazy(() =>
  import('./differences/DifferencesSheet.tsx').then((one) => ({ default: one.DifferencesSheet })),
)
const WithinSheet = lazy(() => import('./within/WithinSheet.tsx').then((one) => ({ default: one.WithinSheet })))
const SheetsSheet = lazy(() => import('./sheets/SheetsSheet.tsx').then((one) => ({ default: one.SheetsSheet })))

export type PlanRoute = Extract<Route, { screen: 'plan' }>

/** Brings the plan of the address to the screen, or says why it cannot be. */
export function PlanHere({ route }: { readonly route: PlanRoute }) {
  const { say } = useWords()
  const open = useApp((state) => state.open)
  const worked = useWorkedOut()
  const [problem, setProblem] = useState<PlanProblem | null>(null)
  const [times, setTimes] = useState(1)
  const { id } = route
  useEffect(() => {
    let isHere = true
    openPlan(id).then(
      (opened) => {
        if (isHere && !opened.ok) setProblem(opened.problems[0] ?? { kind: 'not-a-plan' })
      },
      // Not the plan's fault but ours or the phone's: the page that says so, and lets one start again, takes over.
      (fault: unknown) => {
        if (isHere)
          setProblem(() => {
            throw fault
          })
      },
    )
    return () => {
      isHere = false
      closePlan()
    }
  }, [id, times])
  const isOpen = open?.id === id
  const [wasOpen, setWasOpen] = useState(false)
  if (isOpen && !wasOpen) setWasOpen(true)
  const again = () => {
    setProblem(null)
    setWasOpen(false)
    setTimes(times + 1)
  }
  if (problem !== null) return <NotHere id={id} problem={problem} onCome={again} />
  // It was here and went: deleted, or changed by a newer version, in another tab; the notice says which.
  if (wasOpen && !isOpen) return <NotHere id={id} problem={{ kind: 'not-a-plan' }} onCome={again} />
  if (!isOpen || worked?.plan.id !== id) {
    return (
      <main className="crash">
        <p role="status">{say('app.opening-plan')}</p>
      </main>
    )
  }
  return (
    <WordsProvider show={{ ...open.plan.show, currency: open.plan.currency }}>
      <Places route={route} open={open} worked={worked} />
    </WordsProvider>
  )
}

/** A plan that cannot be shown, and why. One that comes after all (from the office, or brought back in another tab) is opened by itself. */
function NotHere({
  id,
  problem,
  onCome,
}: {
  readonly id: string
  readonly problem: PlanProblem
  readonly onCome: () => void
}) {
  const words = useWords()
  const { say } = words
  const office = useApp((state) => state.office)
  const isListed = useApp(({ rows }) => rows.some((row) => row.id === id && row.trouble === null))
  const [wasListed, setWasListed] = useState(isListed)
  if (wasListed && !isListed) setWasListed(false)
  const hasCome = isListed && !wasListed
  const come = useEffectEvent(onCome)
  useEffect(() => {
    if (hasCome) come()
  }, [hasCome])
  const isOnItsWay = problem.kind === 'not-a-plan' && office !== null
  const why =
    problem.kind === 'newer'
      ? say('keeping.newer', { theirVersion: problem.theirVersion, ourVersion: problem.ourVersion })
      : say(problem.kind === 'damaged' ? 'keeping.row.damaged' : 'app.no-such-plan-why')
  return (
    <main className="crash stack">
      <h1>{say(isOnItsWay ? 'office.not-arrived' : 'app.no-such-plan')}</h1>
      <p>{isOnItsWay ? say('office.not-arrived-why') : why}</p>
      {isOnItsWay && <p role="status">{officeText(office, words)}</p>}
      <LinkButton href={FRONT} shape="big">
        {say('app.to-plans')}
      </LinkButton>
    </main>
  )
}

/** The four places of an open plan, under one title block. */
function Places({
  route,
  open,
  worked,
}: {
  readonly route: PlanRoute
  readonly open: OpenPlan
  readonly worked: WorkedOut
}) {
  const { say } = useWords()
  const nowMs = useNow()
  const working = useWorking()
  const [isTooled, setIsTooled] = useState(false)
  const { id, place } = route
  const { plan } = open
  const { open: showWorking } = working
  const set = useCallback((fields: Readonly<Record<string, unknown>>) => applySet(fields).ok, [])
  const edit = useCallback((change: Parameters<typeof editPlan>[0]) => editPlan(change).ok, [])
  const hand = useMemo(() => ({ set, edit, showWorking }), [set, edit, showWorking])
  return (
    <WorkingContext value={showWorking}>
      <PlanHandContext value={hand}>
        <PlanContext value={plan}>
          <Page
            path={placeHref(id, place)}
            title={`${say(`place.${place}`)}: ${plan.name} · ${say('app.name')}`}
            kind="placed"
            header={
              <Header
                title={<h1>{plan.name}</h1>}
                safety={savingLine(open.saving, nowMs)}
                back={{ href: FRONT, label: say('app.back-to-plans') }}
                tools={
                  <>
                    {(open.canUndo || open.canRedo) && (
                      <button type="button" aria-label={say('app.undo')} disabled={!open.canUndo} onClick={undo}>
                        <Icon name="undo" />
                      </button>
                    )}
                    {open.canRedo && (
                      <button type="button" aria-label={say('app.redo')} onClick={redo}>
                        <Icon name="redo" />
                      </button>
                    )}
                    <button
                      type="button"
                      aria-label={say('front.more', { name: plan.name })}
                      onClick={() => {
                        setIsTooled(true)
                      }}
                    >
                      <Icon name="more" />
                    </button>
                  </>
                }
              />
            }
            foot={
              <Bar
                label={say('app.places')}
                current={place}
                places={PLACES.map((key) => ({ key, icon: key, label: say(`place.${key}`), href: placeHref(id, key) }))}
              />
            }
          >
            <KeepingNotice saving={open.saving} planId={id} />
            <DifferencesNotice href={cardHref(id, place, 'differences')} />
            <Hint
              key={place}
              place={place}
              more={place === 'plan' && <LinkButton href={HOW}>{say('front.how')}</LinkButton>}
            />
            <Place route={route} worked={worked} />
          </Page>
          {route.card === 'within' && (
            <Suspense>
              <WithinSheet route={route} worked={worked} />
            </Suspense>
          )}
          {route.card === 'sheets' && (
            <Suspense>
              <SheetsSheet route={route} worked={worked} />
            </Suspense>
          )}
          {route.card === 'differences' && (
            <Suspense>
              <DifferencesSheet route={route} plan={plan} />
            </Suspense>
          )}
          {isTooled && (
            <PlanTools
              row={{ id, name: plan.name }}
              sheetsHref={cardHref(id, place, 'sheets')}
              onClose={() => {
                setIsTooled(false)
              }}
            />
          )}
          <WorkingSheet
            path={working.path}
            onOpen={working.open}
            onBack={working.back}
            onClose={working.close}
            onChange={(field) => {
              const home = homeOf(field)
              working.closeThen(() => {
                goTo(cardHref(id, home.place, home.card, field))
              })
            }}
          />
        </PlanContext>
      </PlanHandContext>
    </WorkingContext>
  )
}

/** Drawn anew when what follows from the plan is worked out, not while it is typed. */
const Place = memo(function Place({ route, worked }: { readonly route: PlanRoute; readonly worked: WorkedOut }) {
  switch (route.place) {
    case 'plan':
      return <PlanPlace route={route} worked={worked} />
    case 'buy':
      return <BuyPlace route={route} worked={worked} />
    case 'build':
      return <BuildPlace route={route} worked={worked} />
    case 'run':
      return <RunPlace route={route} worked={worked} />
    default:
      return route.place satisfies never
  }
})
