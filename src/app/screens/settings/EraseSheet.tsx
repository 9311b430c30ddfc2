import { useState } from 'react'
import { Button } from '../../parts/Button.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { eraseEverything } from '../../state/phone-actions.ts'
import { useApp } from '../../state/use-app.ts'
import { useWords } from '../../words/use-words.tsx'
import { BackUpButton } from './BackUpButton.tsx'

/** Erasing everything: the one thing that nothing brings back, so that a word has to be typed first. */
export function EraseSheet({ onClose }: { readonly onClose: () => void }) {
  const { say } = useWords()
  const plans = useApp(({ rows }) => rows.length)
  const [typed, setTyped] = useState('')
  const [isAtIt, setIsAtIt] = useState(false)
  const word = say('settings.erase-word')
  const isMeant = typed.trim().toLocaleLowerCase() === word.toLocaleLowerCase()
  return (
    <Sheet title={say('settings.erase')} closeLabel={say('app.close')} onClose={onClose}>
      <p>{say('settings.erase-what', { plans })}</p>
      {plans > 0 && <BackUpButton />}
      <label className="field">
        <span className="field-name">{say('settings.erase-type', { word })}</span>
        <div className="typed text">
          <input
            type="text"
            autoComplete="off"
            autoCapitalize="none"
            value={typed}
            onChange={(event) => {
              setTyped(event.currentTarget.value)
            }}
          />
        </div>
      </label>
      <Button
        shape="big"
        disabled={!isMeant || isAtIt}
        onPress={() => {
          setIsAtIt(true)
          void eraseEverything()
        }}
      >
        {say(isMeant ? 'settings.erase' : 'settings.erase-waits')}
      </Button>
    </Sheet>
  )
}
