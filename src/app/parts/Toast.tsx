import { Button } from './Button.tsx'
import { Icon } from './Icon.tsx'
import './notices.css'

/** What just happened and, perhaps, the way back; whoever shows it decides when it goes. */
export function Toast({
  text,
  undo,
  close,
}: {
  readonly text: string
  readonly undo?: { readonly label: string; readonly onUndo: () => void } | undefined
  readonly close: { readonly label: string; readonly onClose: () => void }
}) {
  return (
    <div className="toast">
      <p>{text}</p>
      {undo && (
        <Button icon="undo" onPress={undo.onUndo}>
          {undo.label}
        </Button>
      )}
      <button type="button" className="toast-close" aria-label={close.label} onClick={close.onClose}>
        <Icon name="close" />
      </button>
    </div>
  )
}
