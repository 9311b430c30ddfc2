import { lazy, Suspense, useCallback, useState } from 'react'
import { Patterns } from '../drawings/Patterns.tsx'
import { Toast } from '../parts/Toast.tsx'
import { codeFetched } from '../state/code-fetched.ts'
import { clearNotice } from '../state/notices.ts'
import { useApp } from '../state/use-app.ts'
import { say } from '../words/catalogue.ts'
import { openWords } from '../words/language.ts'
import { DEFAULT_SHOW } from '../words/show.ts'
import { useLanguage, useWords, WordsProvider } from '../words/use-words.tsx'
import './app.css'
import { Crash } from './Crash.tsx'
import { FrontPage } from './front/FrontPage.tsx'
import type { Route } from './route.ts'
import { TermContext } from './terms/term-context.ts'
import { useRoute } from './use-route.ts'

// The screens of a plan bring the arithmetic and most words with them; the front page does not wait for those.
const withWords = <T,>(screen: () => Promise<T>): Promise<T> =>
  codeFetched(async () => (await Promise.all([screen(), openWords()]))[0])
const loadPlan = () => withWords(() => import('./PlanHere.tsx'))
const loadNew = () => withWords(() => import('./new-plan/NewPlan.tsx'))
const loadTrust = () => withWords(() => import('./trust/TrustPage.tsx'))
const PlanHere = lazy(() => loadPlan().then(({ PlanHere: screen }) => ({ default: screen })))
const Settings = lazy(() =>
  withWords(() => import('./settings/Settings.tsx')).then((one) => ({ default: one.Settings })),
)
const TrustPage = lazy(() => loadTrust().then(({ TrustPage: screen }) => ({ default: screen })))
const HandOver = lazy(() =>
  withWords(() => import('./hand-over/HandOver.tsx')).then((one) => ({ default: one.HandOver })),
)
const ScanScreen = lazy(() =>
  withWords(() => import('./hand-over/ScanScreen.tsx')).then((one) => ({ default: one.ScanScreen })),
)
const TakeScreen = lazy(() =>
  withWords(() => import('./hand-over/TakeScreen.tsx')).then((one) => ({ default: one.TakeScreen })),
)
const HistoryScreen = lazy(() =>
  withWords(() => import('./history/HistoryScreen.tsx')).then((one) => ({ default: one.HistoryScreen })),
)
const PriceBook = lazy(() =>
  withWords(() => import('./prices/PriceBookScreen.tsx')).then((one) => ({ default: one.PriceBookScreen })),
)
const Erased = lazy(() => withWords(() => import('./settings/Erased.tsx')).then((one) => ({ default: one.Erased })))
const HowItWorks = lazy(() =>
  withWords(() => import('./how/HowItWorks.tsx')).then((one) => ({ default: one.HowItWorks })),
)
const TradeWords = lazy(() =>
  withWords(() => import('./terms/TradeWords.tsx')).then((one) => ({ default: one.TradeWords })),
)
const TermSheet = lazy(() =>
  withWords(() => import('./terms/TermSheet.tsx')).then((one) => ({ default: one.TermSheet })),
)
const NewPlan = lazy(() => loadNew().then(({ NewPlan: screen }) => ({ default: screen })))

/** The whole app: one screen at a time, by the address. */
export function App() {
  const route = useRoute()
  useLanguage()
  const planId = 'id' in route ? route.id : null
  const [asked, setAsked] = useState<{ readonly term: string; readonly at: Route } | null>(null)
  const ask = useCallback(
    (term: string) => {
      setAsked({ term, at: route })
    },
    [route],
  )
  return (
    <WordsProvider show={DEFAULT_SHOW}>
      <Patterns />
      <Crash key={planId} planId={planId}>
        <Suspense fallback={<Waiting text={say('app.opening-plan')} />}>
          <TermContext value={ask}>
            <Screen route={route} />
          </TermContext>
        </Suspense>
        {asked?.at === route && (
          <Suspense>
            <TermSheet
              term={asked.term}
              onClose={() => {
                setAsked(null)
              }}
            />
          </Suspense>
        )}
      </Crash>
      <NoticeOfLate />
    </WordsProvider>
  )
}

function Screen({ route }: { readonly route: Route }) {
  const phase = useApp((state) => state.phase)
  const storage = useApp((state) => state.storage)
  const erased = useApp((state) => state.erased)
  if (erased !== null) return <Erased erased={erased} />
  // The page for faults says so and lets one start again; to wait on would be to wait for ever.
  if (phase === 'failed') throw new Error('the plans could not be read')
  if (phase === 'loading') {
    return <Waiting text={say(storage === 'blocked' ? 'keeping.storage.blocked' : 'app.opening')} />
  }
  switch (route.screen) {
    case 'front':
      return <FrontPage />
    case 'new':
      return <NewPlan />
    case 'settings':
      return <Settings />
    case 'trust':
      return <TrustPage />
    case 'how':
      return <HowItWorks />
    case 'words':
      return <TradeWords />
    case 'prices':
      return <PriceBook />
    case 'scan':
      return <ScanScreen />
    case 'take':
      return <TakeScreen key={route.fragment} fragment={route.fragment} />
    case 'hand-over':
      return <HandOver key={route.id} planId={route.id} />
    case 'history':
      return <HistoryScreen key={route.id} planId={route.id} />
    case 'plan':
      return <PlanHere key={route.id} route={route} />
    default:
      return route satisfies never
  }
}

function Waiting({ text }: { readonly text: string }) {
  return (
    <main className="crash">
      <p role="status">{text}</p>
    </main>
  )
}

/** Fetches the screens that come next while nothing else happens, so that a tap finds them ready. */
export function fetchAhead(): void {
  const idle =
    'requestIdleCallback' in window ? window.requestIdleCallback : (then: () => void) => setTimeout(then, 800)
  idle(() => {
    loadPlan().catch(() => {})
    loadNew().catch(() => {})
  })
}

/** The last short message, with its way back. */
function NoticeOfLate() {
  const notice = useApp((state) => state.notice)
  const { named } = useWords()
  return (
    <div role="status">
      {notice && (
        <Toast
          text={named(notice.key, notice.args)}
          undo={notice.undo && { label: say('app.undo'), onUndo: notice.undo }}
          close={{ label: say('app.close'), onClose: clearNotice }}
        />
      )}
    </div>
  )
}
