import './num.css'

/** A worked-out figure on its dimension line. It is always a button: it opens its working. */
export function Num({
  label,
  figure,
  unit = '',
  isUnitFirst = false,
  size = 'row',
  onOpen,
}: {
  /** What the figure is, for whoever hears the screen; the figure and its unit are added. */
  readonly label: string
  readonly figure: string
  readonly unit?: string
  readonly isUnitFirst?: boolean
  readonly size?: 'row' | 'key' | 'main' | 'far'
  readonly onOpen: () => void
}) {
  return (
    <button type="button" className={isUnitFirst ? `num ${size} unit-first` : `num ${size}`} onClick={onOpen}>
      <span className="hide">{label}:</span> {isUnitFirst && <Unit of={unit} />} <span>{figure}</span>{' '}
      {!isUnitFirst && <Unit of={unit} />}
    </button>
  )
}

const Unit = ({ of: unit }: { readonly of: string }) => (unit === '' ? null : <span className="of">{unit}</span>)

/** A key figure under its name. */
export function KeyNum(props: Parameters<typeof Num>[0]) {
  return (
    <div>
      <p aria-hidden="true">{props.label}</p>
      <Num size="key" {...props} />
    </div>
  )
}
