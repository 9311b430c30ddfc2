import { useEffect, useState } from 'react'
import { Button } from '../../parts/Button.tsx'
import { canSpeak, hush, speak } from '../../state/site-actions.ts'
import { useWords } from '../../words/use-words.tsx'

/** Reads a step aloud, where the phone can; a second press stops it. */
export function ReadAloud({ text }: { readonly text: string }) {
  const { say } = useWords()
  const [isReading, setIsReading] = useState(false)
  useEffect(() => hush, [text])
  if (!canSpeak()) return null
  return (
    <Button
      tone={isReading ? 'solid' : 'plain'}
      onPress={() => {
        if (isReading) {
          hush()
          setIsReading(false)
          return
        }
        setIsReading(true)
        speak(text, say('build.language'), () => {
          setIsReading(false)
        })
      }}
    >
      {say(isReading ? 'build.stop-reading' : 'build.read-aloud')}
    </Button>
  )
}
