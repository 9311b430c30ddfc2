import { Patterns } from '../drawings/Patterns.tsx'
import { Toast } from '../parts/Toast.tsx'
import { clearNotice } from '../state/notices.ts'
import { useApp } from '../state/use-app.ts'
import { say } from '../words/catalogue.ts'
import { localCurrency } from '../words/currencies.ts'
import { DEFAULT_SHOW } from '../words/show.ts'
import { useWords, WordsProvider } from '../words/use-words.tsx'
import './app.css'
import { Crash } from './Crash.tsx'
import { FrontPage } from './front/FrontPage.tsx'
import { NewPlan } from './new-plan/NewPlan.tsx'
import { PlanHere } from './PlanHere.tsx'
import type { Route } from './route.ts'
import { Settings } from './settings/Settings.tsx'
import { useRoute } from './use-route.ts'

/** Outside any plan figures are written as the phone's region writes them. */
const OUTSIDE = { ...DEFAULT_SHOW, currency: localCurrency() }

/** The whole app: one screen at a time, by the address. */
export function App() {
  const route = useRoute()
  const planId = route.screen === 'plan' ? route.id : null
  return (
    <WordsProvider show={OUTSIDE}>
      <Patterns />
      <Crash key={planId} planId={planId}>
        <Screen route={route} />
      </Crash>
      <NoticeOfLate />
    </WordsProvider>
  )
}

function Screen({ route }: { readonly route: Route }) {
  const phase = useApp((state) => state.phase)
  const storage = useApp((state) => state.storage)
  if (phase === 'loading') {
    return (
      <main className="crash">
        <p role="status">{say(storage === 'blocked' ? 'keeping.storage.blocked' : 'app.opening')}</p>
      </main>
    )
  }
  switch (route.screen) {
    case 'front':
      return <FrontPage />
    case 'new':
      return <NewPlan />
    case 'settings':
      return <Settings />
    case 'plan':
      return <PlanHere key={route.id} route={route} />
    default:
      return route satisfies never
  }
}

/** The last short message, with its way back. */
function NoticeOfLate() {
  const notice = useApp((state) => state.notice)
  const { named } = useWords()
  if (notice === null) return null
  return (
    <Toast
      text={named(notice.key, notice.args)}
      undo={notice.undo && { label: say('app.undo'), onUndo: notice.undo }}
      close={{ label: say('app.close'), onClose: clearNotice }}
    />
  )
}
