import { StrictMode, useEffect, useState } from 'react'
import { createRoot } from 'react-dom/client'
import { applyUpdate, watchOffline, type OfflineStatus } from './device/offline/register.ts'

declare const __BUILD__: string
document.documentElement.dataset['build'] = __BUILD__

function App() {
  const [offline, setOffline] = useState<OfflineStatus>({ kind: 'starting' })
  useEffect(() => {
    watchOffline(setOffline, () => true)
  }, [])
  return (
    <main>
      <h1>Kilnwright</h1>
      {offline.kind === 'update-waiting' && <button onClick={() => void applyUpdate()}>Update now</button>}
    </main>
  )
}

const root = document.getElementById('root')
if (root === null) throw new Error('no #root')
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
)
