import { useEffect, useState } from 'react'
import { Button } from '../../parts/Button.tsx'
import { TextField } from '../../parts/TextField.tsx'
import { namePhone, phoneStorage, type PhoneStorage } from '../../state/phone-actions.ts'
import { useApp } from '../../state/use-app.ts'
import { showDay } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import { BackUpButton } from './BackUpButton.tsx'
import { EraseSheet } from './EraseSheet.tsx'
import { OfficePart } from './OfficePart.tsx'

const MOST_NAME = 80
const MEGABYTE = 1_000_000

/** The phone itself: its name, how safe what it keeps is, copies elsewhere, and erasing it all. */
export function PhonePart() {
  const { say, number } = useWords()
  const phoneName = useApp((state) => state.phoneName)
  const backedUpAtMs = useApp((state) => state.backedUpAtMs)
  const [kept, setKept] = useState<PhoneStorage | null>(null)
  const [isErasing, setIsErasing] = useState(false)
  useEffect(() => {
    let isHere = true
    void phoneStorage().then((found) => {
      if (isHere) setKept(found)
    })
    return () => {
      isHere = false
    }
  }, [])
  return (
    <>
      <h2>{say('settings.phone')}</h2>
      <TextField
        name={say('settings.phone-name')}
        value={phoneName}
        most={MOST_NAME}
        help={say('settings.phone-name-why')}
        onChange={(name) => void namePhone(name)}
      />
      {kept && (
        <p>
          {say(`settings.kept.${kept.persistence}`)}{' '}
          {kept.usedBytes !== null && say('settings.used', { size: number(kept.usedBytes / MEGABYTE, 1) })}
        </p>
      )}
      <p>
        {backedUpAtMs === null
          ? say('keeping.no-back-up')
          : say('keeping.last-back-up', { when: showDay(backedUpAtMs) })}
      </p>
      <BackUpButton />
      <OfficePart />
      <p className="quiet">{say('settings.private')}</p>
      <Button
        shape="big"
        icon="close"
        onPress={() => {
          setIsErasing(true)
        }}
      >
        {say('settings.erase')}
      </Button>
      {isErasing && (
        <EraseSheet
          onClose={() => {
            setIsErasing(false)
          }}
        />
      )}
    </>
  )
}
