import type { Erased as WhatWent } from '../../state/app-state.ts'
import { useWords } from '../../words/use-words.tsx'

/** All that is left when everything was erased: what went. */
export function Erased({ erased }: { readonly erased: WhatWent }) {
  const { say } = useWords()
  return (
    <main className="crash stack" role="status">
      <h1>{say('settings.erased')}</h1>
      <p>{say('settings.erased-what', { plans: erased.plans, copies: erased.copies, files: erased.files })}</p>
      <p>{say('settings.erased-also')}</p>
      <p className="quiet">{say('settings.erased-next')}</p>
    </main>
  )
}
