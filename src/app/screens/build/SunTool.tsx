import { useState } from 'react'
import { Icon } from '../../parts/Icon.tsx'
import { useWords } from '../../words/use-words.tsx'
import { keptLight, setLight, type Light } from '../light.ts'

/** Black on white for the sun, and back to the light that was chosen before. */
export function SunTool() {
  const { say } = useWords()
  const [light, setShown] = useState<Light>(keptLight)
  const [before] = useState<Light>(() => (keptLight() === 'sun' ? 'phone' : keptLight()))
  const isSun = light === 'sun'
  return (
    <button
      type="button"
      aria-pressed={isSun}
      aria-label={say('build.sun')}
      onClick={() => {
        const next = isSun ? before : 'sun'
        setLight(next)
        setShown(next)
      }}
    >
      <Icon name="sun" />
    </button>
  )
}
