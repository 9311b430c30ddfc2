import { useId, useState } from 'react'
import './field.css'
import { Icon } from './Icon.tsx'

/** A line of words that one types; taken when the field is left, refused where `refuse` gives a reason, and then kept as typed. */
export function TextField({
  name,
  value,
  most,
  onChange,
  refuse,
  autoFocus = false,
}: {
  readonly name: string
  readonly value: string
  readonly most: number
  readonly onChange: (value: string) => void
  readonly refuse?: (value: string) => string | null
  readonly autoFocus?: boolean
}) {
  const field = useId()
  const [typed, setTyped] = useState<string | null>(null)
  const [refusal, setRefusal] = useState<string | null>(null)
  const take = (entry: string) => {
    const reason = refuse?.(entry.trim()) ?? null
    setRefusal(reason)
    if (reason !== null) return
    setTyped(null)
    if (entry.trim() !== value) onChange(entry.trim())
  }
  return (
    <div className={refusal === null ? 'field' : 'field bad'}>
      <label className="field-name" htmlFor={field}>
        {name}
      </label>
      <div className="typed text">
        <input
          id={field}
          type="text"
          autoComplete="off"
          maxLength={most}
          // Opened by the user's own press on a thing to be named: the field is what they asked for.
          ref={autoFocus ? focusOnce : undefined}
          value={typed ?? value}
          aria-invalid={refusal !== null}
          aria-describedby={`${field}-note`}
          onChange={(event) => {
            setTyped(event.currentTarget.value)
            setRefusal(null)
          }}
          onBlur={(event) => {
            take(event.currentTarget.value)
          }}
          onKeyDown={(event) => {
            if (event.key === 'Enter') take(event.currentTarget.value)
          }}
        />
      </div>
      <p id={`${field}-note`} className="help refused" role="alert" hidden={refusal === null}>
        <Icon name="problem" />
        <span>{refusal}</span>
      </p>
    </div>
  )
}

const focusOnce = (input: HTMLInputElement | null) => {
  input?.focus()
  input?.select()
}
