import { useId, useState, type ReactNode } from 'react'
import './field.css'
import { Icon } from './Icon.tsx'

/**
 * A line that one types; taken when the field is left, refused where `refuse` gives a reason, and then kept as typed. With `isTakenAtOnce` what
 * holds is taken letter by letter, for what must outlive a tab that dies meanwhile.
 */
export function TextField({
  id,
  name,
  value,
  most,
  onChange,
  refuse,
  unit,
  help,
  keyboard = 'text',
  isTakenAtOnce = false,
}: {
  readonly id?: string
  readonly name: string
  readonly value: string
  readonly most: number
  readonly onChange: (value: string) => void
  readonly refuse?: (value: string) => string | null
  readonly unit?: string
  readonly help?: ReactNode
  readonly keyboard?: 'text' | 'decimal'
  readonly isTakenAtOnce?: boolean
}) {
  const own = useId()
  const field = id ?? own
  const [typed, setTyped] = useState<string | null>(null)
  const [refusal, setRefusal] = useState<string | null>(null)
  const take = (entry: string) => {
    const reason = refuse?.(entry.trim()) ?? null
    setRefusal(reason)
    if (reason !== null) return
    setTyped(null)
    if (entry.trim() !== value) onChange(entry.trim())
  }
  const note = refusal ?? help ?? null
  return (
    <div className={refusal === null ? 'field' : 'field bad'}>
      <label className="field-name" htmlFor={field}>
        {name}
      </label>
      <div className="typed text">
        <input
          id={field}
          type="text"
          inputMode={keyboard}
          autoComplete="off"
          maxLength={most}
          value={typed ?? value}
          aria-invalid={refusal !== null}
          aria-describedby={`${field}-note`}
          onChange={(event) => {
            const entry = event.currentTarget.value
            setTyped(entry)
            setRefusal(null)
            if (isTakenAtOnce && (refuse?.(entry.trim()) ?? null) === null) onChange(entry.trim())
          }}
          onBlur={(event) => {
            take(event.currentTarget.value)
          }}
          onKeyDown={(event) => {
            if (event.key === 'Enter') take(event.currentTarget.value)
          }}
        />
        {unit !== undefined && <span className="of">{unit}</span>}
      </div>
      <p
        id={`${field}-note`}
        className={refusal === null ? 'help' : 'help refused'}
        role={refusal === null ? undefined : 'alert'}
        hidden={note === null}
      >
        {refusal !== null && <Icon name="problem" />}
        <span>{note}</span>
      </p>
    </div>
  )
}
