import './device/older-browsers.ts'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import './app/parts/tokens.css'
import './app/parts/base.css'
import { App, fetchAhead } from './app/screens/App.tsx'
import { keptLight, showLight } from './app/screens/light.ts'
import { isSafeToReload, startApp } from './app/state/actions.ts'
import { followOffline } from './app/state/offline-actions.ts'
import { startLanguage } from './app/words/language.ts'

declare const __BUILD__: string
document.documentElement.dataset['build'] = __BUILD__
showLight(keptLight())

const root = document.getElementById('root')
if (root === null) throw new Error('no #root')
void startApp()
followOffline(isSafeToReload)
const page = createRoot(root)
// Where the words of another language cannot be had, the app starts in English.
void startLanguage()
  .catch(() => {})
  .then(() => {
    page.render(
      <StrictMode>
        <App />
      </StrictMode>,
    )
    fetchAhead()
  })
