import { useState } from 'react'
import { Button } from '../../parts/Button.tsx'
import type { Private } from '../../state/file-actions.ts'
import { sendLink, type HandOverOffer } from '../../state/hand-over-actions.ts'
import { canShareFiles, handOnFile, savePlanFile, sharePlan } from '../../state/save-plan-file.ts'
import { useWords } from '../../words/use-words.tsx'
import { sizeText } from './size-text.ts'

/** A file or a link, for phones that are not side by side. */
export function OtherWays({
  planId,
  name,
  chosen,
  offer: { fragment, changesFile, fileBytes },
}: {
  readonly planId: string
  readonly name: string
  readonly chosen: Private
  readonly offer: Pick<HandOverOffer, 'fragment' | 'changesFile' | 'fileBytes'>
}) {
  const words = useWords()
  const { say } = words
  const [said, setSaid] = useState('')
  const [shown, setShown] = useState<string | null>(null)
  const changes = changesFile?.(`${name} ${say('take.changes')}`)
  const asFile = async () => {
    if (changes !== undefined) {
      const outcome = await handOnFile(changes)
      setSaid(outcome === 'cancelled' ? '' : say(`hand-over.file-${outcome}`))
      return
    }
    if (!canShareFiles()) {
      await savePlanFile(planId, chosen)
      setSaid(say('hand-over.file-saved'))
      return
    }
    const outcome = await sharePlan(planId, chosen)
    setSaid(outcome === 'cancelled' ? '' : say(`hand-over.file-${outcome}`))
  }
  const asLink = async (part: string) => {
    const url = window.location.href.replace(/#.*$/, '') + part
    const outcome = await sendLink(name, url)
    setSaid(outcome === 'cancelled' ? '' : say(`hand-over.link-${outcome}`))
    setShown(outcome === 'failed' ? url : null)
  }
  return (
    <>
      <div className="course-row">
        <Button icon="file" onPress={() => void asFile()}>
          {say('hand-over.as-file', { size: sizeText(fileBytes, words) })}
        </Button>
        {fragment === null ? (
          <Button disabled>{say('hand-over.link-too-long')}</Button>
        ) : (
          <Button icon="share" onPress={() => void asLink(fragment)}>
            {say('hand-over.as-link')}
          </Button>
        )}
      </div>
      <p role="status">{said}</p>
      {shown !== null && (
        <label className="field">
          <span className="field-name">{say('hand-over.as-link')}</span>
          <div className="typed text">
            <input
              readOnly
              value={shown}
              onFocus={(event) => {
                event.currentTarget.select()
              }}
            />
          </div>
        </label>
      )}
      <p className="quiet">{say('hand-over.link-why')}</p>
    </>
  )
}
