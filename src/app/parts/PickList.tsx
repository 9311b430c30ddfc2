import { useId } from 'react'
import './field.css'

/** One of many, where pictures would not help: the phone's own list. */
export function PickList<K extends string>({
  name,
  value,
  options,
  onChange,
}: {
  readonly name: string
  readonly value: K
  readonly options: readonly { readonly key: K; readonly label: string }[]
  readonly onChange: (key: K) => void
}) {
  const field = useId()
  return (
    <div className="field">
      <label className="field-name" htmlFor={field}>
        {name}
      </label>
      <select
        id={field}
        className="pick-list"
        value={value}
        onChange={(event) => {
          const chosen = options.find(({ key }) => key === event.currentTarget.value)
          if (chosen !== undefined) onChange(chosen.key)
        }}
      >
        {options.map(({ key, label }) => (
          <option key={key} value={key}>
            {label}
          </option>
        ))}
      </select>
    </div>
  )
}
