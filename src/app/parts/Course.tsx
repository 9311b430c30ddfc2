import './rows.css'

/** Progress as a course being laid: soot is laid, ember in hand, empty to do. */
export function Course({
  of,
  laid,
  inHand = false,
  label,
}: {
  readonly of: number
  readonly laid: number
  readonly inHand?: boolean
  readonly label: string
}) {
  return (
    <div className="bond" role="img" aria-label={label}>
      {Array.from({ length: of }, (_, index) => (
        <i key={index} className={index < laid ? 'laid' : inHand && index === laid ? 'next' : undefined} />
      ))}
    </div>
  )
}
