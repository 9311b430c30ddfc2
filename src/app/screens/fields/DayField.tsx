import { useId } from 'react'

/** A day, by the phone's own calendar; `onChange` hears null where the box was emptied. */
export function DayField({
  id,
  name,
  day,
  onChange,
}: {
  readonly id?: string
  readonly name: string
  readonly day: string | null
  readonly onChange: (day: string | null) => void
}) {
  const own = useId()
  const box = id ?? own
  return (
    <div className="field">
      <label className="field-name" htmlFor={box}>
        {name}
      </label>
      <input
        id={box}
        type="date"
        className="pick-list"
        value={day ?? ''}
        onChange={(event) => {
          const typed = event.currentTarget.value
          onChange(typed === '' ? null : typed)
        }}
      />
    </div>
  )
}
