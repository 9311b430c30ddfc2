import './term.css'

/** A word in a sentence that opens its meaning. */
export function Term({
  word,
  label,
  onOpen,
}: {
  readonly word: string
  /** The word and what opening it gives, for those who hear it. */
  readonly label: string
  readonly onOpen: () => void
}) {
  return (
    <button type="button" className="term" aria-label={label} aria-haspopup="dialog" onClick={onOpen}>
      {word}
    </button>
  )
}
