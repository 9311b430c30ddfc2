import { useState } from 'react'
import { Button } from '../../parts/Button.tsx'
import { leaveOffice } from '../../state/office-actions.ts'
import { useApp } from '../../state/use-app.ts'
import { useWords } from '../../words/use-words.tsx'
import { OfficeSheet } from './OfficeSheet.tsx'
import { officeText } from './office-text.ts'

/** The office that this phone has joined, if any. */
export function OfficePart() {
  const words = useWords()
  const { say } = words
  const office = useApp((state) => state.office)
  const [isTyping, setIsTyping] = useState(false)
  return (
    <>
      <h2>{say('office.title')}</h2>
      <p role="status">{office === null ? say('office.off') : officeText(office, words)}</p>
      <div className="course-row">
        <Button
          shape="big"
          icon="people"
          onPress={() => {
            setIsTyping(true)
          }}
        >
          {say(office === null ? 'office.join' : 'office.change')}
        </Button>
        {office !== null && (
          <Button shape="big" onPress={() => void leaveOffice()}>
            {say('office.leave')}
          </Button>
        )}
      </div>
      {isTyping && (
        <OfficeSheet
          onClose={() => {
            setIsTyping(false)
          }}
        />
      )}
    </>
  )
}
