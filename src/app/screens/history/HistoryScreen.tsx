import { useEffect, useState } from 'react'
import type { Plan } from '../../../core/plan/schema.ts'
import { Button, LinkButton } from '../../parts/Button.tsx'
import { Header } from '../../parts/Header.tsx'
import { planHistory, restoreCopy, type PlanHistory } from '../../state/history-actions.ts'
import { useApp } from '../../state/use-app.ts'
import { showWhen } from '../../words/dates.ts'
import { useWords, WordsProvider } from '../../words/use-words.tsx'
import '../differences/differences.css'
import { Page } from '../Page.tsx'
import { historyHref, placeHref } from '../route.ts'
import { useNow } from '../use-now.ts'
import { goTo } from '../use-route.ts'
import { StepOfHistory } from './StepOfHistory.tsx'

/** What changed in a plan and on whose phone, and the earlier copies that can be brought back. */
export function HistoryScreen({ planId }: { readonly planId: string }) {
  const plan = useApp(({ rows }) => rows.find(({ id }) => id === planId)?.plan) ?? null
  const inside = <History planId={planId} plan={plan} />
  return plan === null ? (
    inside
  ) : (
    <WordsProvider show={{ ...plan.show, currency: plan.currency }}>{inside}</WordsProvider>
  )
}

function History({ planId, plan }: { readonly planId: string; readonly plan: Plan | null }) {
  const { say } = useWords()
  const nowMs = useNow()
  const [history, setHistory] = useState<PlanHistory | null>(null)
  const [isRefused, setIsRefused] = useState(false)
  useEffect(() => {
    let isHere = true
    void planHistory(planId).then((found) => {
      if (isHere) setHistory(found)
    })
    return () => {
      isHere = false
    }
  }, [planId])
  const bringBack = async (atMs: number) => {
    const restored = await restoreCopy(planId, atMs, showWhen(atMs, nowMs))
    setIsRefused(!restored.ok)
    if (restored.ok) goTo(placeHref(planId, 'plan'))
  }
  return (
    <Page
      path={historyHref(planId)}
      title={`${say('history.title')} · ${say('app.name')}`}
      kind="single"
      header={
        <Header
          title={<h1>{say('history.title')}</h1>}
          back={{ href: placeHref(planId, 'plan'), label: say('app.close'), icon: 'close' }}
        />
      }
    >
      {plan && (
        <p>
          <b>{plan.name}</b>
        </p>
      )}
      {history?.steps.length === 0 && <p>{say('history.none')}</p>}
      {history?.steps.map((step) => (
        <StepOfHistory key={step.fromMs} step={step} plan={plan} nowMs={nowMs} />
      ))}
      <h2>{say('history.copies')}</h2>
      <p className="quiet">{say('history.copies-why')}</p>
      {history?.copies.length === 0 && (
        <>
          <p>{say('history.no-copies')}</p>
          <LinkButton href={placeHref(planId, 'plan')}>{say('empty.to-plan')}</LinkButton>
        </>
      )}
      {isRefused && <p role="alert">{say('history.not-restored')}</p>}
      <ul>
        {history?.copies.map(({ atMs, why }) => (
          <li key={atMs} className="lead">
            <span>{say(`history.${why}`, { when: showWhen(atMs, nowMs) })}</span>
            <Button
              icon="undo"
              label={`${say('history.bring-back')}: ${say(`history.${why}`, { when: showWhen(atMs, nowMs) })}`}
              onPress={() => void bringBack(atMs)}
            >
              {say('history.bring-back')}
            </Button>
          </li>
        ))}
      </ul>
    </Page>
  )
}
