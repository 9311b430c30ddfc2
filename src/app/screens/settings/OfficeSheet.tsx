import { useEffect, useState } from 'react'
import { Button } from '../../parts/Button.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { TextField } from '../../parts/TextField.tsx'
import { TickRow } from '../../parts/TickRow.tsx'
import { joinOffice, officeNote, type OfficeWish } from '../../state/office-actions.ts'
import { useWords } from '../../words/use-words.tsx'

const MOST_CHARS = 200
const NOTHING: OfficeWish = { address: '', key: '', programme: '', names: false }

/** What it takes to join an office: its address, its key, and which programme of plans. */
export function OfficeSheet({ onClose }: { readonly onClose: () => void }) {
  const { say } = useWords()
  const [wish, setWish] = useState<OfficeWish | null>(null)
  const [refusal, setRefusal] = useState<'not-an-address' | 'not-secure' | 'incomplete' | null>(null)
  useEffect(() => {
    let isHere = true
    void officeNote().then((note) => {
      if (isHere) setWish(note ?? NOTHING)
    })
    return () => {
      isHere = false
    }
  }, [])
  const join = async (chosen: OfficeWish) => {
    const { address, key, programme } = chosen
    const problem = [address, key, programme].includes('') ? 'incomplete' : await joinOffice(chosen)
    setRefusal(problem)
    if (problem === null) onClose()
  }
  return (
    <Sheet
      title={say('office.join')}
      closeLabel={say('app.close')}
      onClose={onClose}
      foot={
        <Button tone="fire" shape="big" disabled={wish === null} onPress={() => wish && void join(wish)}>
          {say('office.join')}
        </Button>
      }
    >
      <p className="quiet">{say('office.why')}</p>
      {wish && (
        <>
          {(['address', 'key', 'programme'] as const).map((field) => (
            <TextField
              key={field}
              name={say(`office.${field}`)}
              value={wish[field]}
              most={MOST_CHARS}
              help={say(`office.${field}-why`)}
              onChange={(value) => {
                setWish({ ...wish, [field]: value })
              }}
            />
          ))}
          <TickRow
            isOn={wish.names}
            onTick={(names) => {
              setWish({ ...wish, names })
            }}
          >
            {say('hand-over.names')}
          </TickRow>
          <p className="quiet">{say('office.choose-first')}</p>
          {refusal !== null && <p role="alert">{say(`office.${refusal}`)}</p>}
        </>
      )}
    </Sheet>
  )
}
