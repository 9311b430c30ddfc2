// A bare page around `src/device/offline`: the real worker and the real update, with unsaved work at the tick of a box.
import { applyUpdate, watchOffline } from '../../../src/device/offline/register.ts'
import { askToPersist, storageEstimate } from '../../../src/device/offline/storage.ts'

declare const __BUILD__: string

const { dataset } = document.documentElement
const box = document.querySelector('input')

dataset['build'] = __BUILD__
watchOffline(
  ({ kind }) => {
    dataset['offline'] = `${dataset['offline'] ?? ''} ${kind}`.trim()
  },
  () => box?.checked !== true,
)
document.querySelector('button')?.addEventListener('click', () => {
  void applyUpdate().then((outcome) => {
    dataset['outcome'] = outcome
  })
})
void Promise.all([askToPersist(), storageEstimate()]).then(([persistence, estimate]) => {
  dataset['persistence'] = persistence
  dataset['usedBytes'] = String(estimate?.usedBytes)
  dataset['quotaBytes'] = String(estimate?.quotaBytes)
})
