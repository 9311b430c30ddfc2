import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import './app/parts/tokens.css'
import './app/parts/base.css'
import { App, fetchAhead } from './app/screens/App.tsx'
import { keptLight, showLight } from './app/screens/light.ts'
import { isSafeToReload, startApp } from './app/state/actions.ts'
import { followOffline } from './app/state/offline-actions.ts'

declare const __BUILD__: string
document.documentElement.dataset['build'] = __BUILD__
showLight(keptLight())

const root = document.getElementById('root')
if (root === null) throw new Error('no #root')
void startApp()
followOffline(isSafeToReload)
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
)
fetchAhead()
