import { useEffect, useState, type ReactNode } from 'react'
import { Button } from '../../parts/Button.tsx'
import { NoticeBox } from '../../parts/NoticeBox.tsx'
import { useWords } from '../../words/use-words.tsx'
import type { Place } from '../route.ts'
import { countUse, isNew, putAway } from './kept-hints.ts'

/** One short hint for who is new to a place: gone for ever once it is put away, and by itself after three visits. */
export function Hint({ place, more }: { readonly place: Place; readonly more?: ReactNode }) {
  const { named, say } = useWords()
  const [isShown, setIsShown] = useState(() => isNew(place))
  useEffect(() => {
    countUse(place)
  }, [place])
  if (!isShown) return null
  return (
    <NoticeBox
      icon="info"
      action={
        <div className="course-row">
          <Button
            onPress={() => {
              putAway(place)
              setIsShown(false)
            }}
          >
            {say('hint.away')}
          </Button>
          {more}
        </div>
      }
    >
      {named(`hint.${place}`)}
    </NoticeBox>
  )
}
