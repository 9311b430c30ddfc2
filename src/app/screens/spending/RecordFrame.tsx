import type { ReactNode } from 'react'
import { Button } from '../../parts/Button.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { useWords } from '../../words/use-words.tsx'

/** A record being written: nothing is kept before the button at the foot, which says what is missing where it cannot. */
export function RecordFrame({
  title,
  keep,
  missing,
  onKeep,
  onTakeAway,
  onClose,
  children,
}: {
  readonly title: string
  readonly keep: string
  readonly missing: string | null
  readonly onKeep: () => void
  /** For a record that is there already. */
  readonly onTakeAway?: (() => void) | undefined
  readonly onClose: () => void
  readonly children: ReactNode
}) {
  const { say } = useWords()
  return (
    <Sheet
      title={title}
      closeLabel={say('app.close')}
      onClose={onClose}
      height="full"
      foot={
        <Button tone="fire" shape="big" disabled={missing !== null} onPress={onKeep}>
          {missing ?? keep}
        </Button>
      }
    >
      {children}
      {onTakeAway && (
        <Button shape="big" icon="close" onPress={onTakeAway}>
          {say('spent.take-away')}
        </Button>
      )}
    </Sheet>
  )
}
