import { Icon } from '../../parts/Icon.tsx'

/** A box to tick and to untick: the whole square answers. */
export function TickBox({
  isDone,
  label,
  onTick,
}: {
  readonly isDone: boolean
  readonly label: string
  readonly onTick: () => void
}) {
  return (
    <button type="button" className="tick-box" aria-pressed={isDone} aria-label={label} onClick={onTick}>
      <span className={isDone ? 'box done' : 'box'}>{isDone && <Icon name="tick" />}</span>
    </button>
  )
}
