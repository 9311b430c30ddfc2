import { useState } from 'react'
import { Segments } from '../parts/Picks.tsx'
import { useWords } from '../words/use-words.tsx'
import { keptLight, LIGHTS, setLight } from './light.ts'

/** How bright this phone shows the app; `sun` is for reading outdoors. */
export function LightChoice() {
  const { say } = useWords()
  const [light, setChosen] = useState(keptLight)
  return (
    <Segments
      name={say('light.name')}
      isNameShown
      choices={LIGHTS.map((key) => ({ key, label: say(`light.${key}`) }))}
      chosen={light}
      onChoose={(key) => {
        setLight(key)
        setChosen(key)
      }}
    />
  )
}
