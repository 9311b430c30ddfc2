import type { ReactNode } from 'react'
import { TextField } from '../../parts/TextField.tsx'
import { inLine } from '../../words/show.ts'
import { useWords } from '../../words/use-words.tsx'
import type { FieldWay } from './field-way.ts'

/** A number that one types or leaves open: an empty box is not known, not zero. */
export function OpenNumberField({
  id,
  name,
  value,
  way,
  onChange,
  help,
}: {
  readonly id?: string
  readonly name: string
  readonly value: number | null
  readonly way: FieldWay
  readonly onChange: (value: number | null) => void
  readonly help?: ReactNode
}) {
  const { say } = useWords()
  const { limit, show, read } = way
  const refuse = (typed: string): string | null => {
    if (typed === '') return null
    const entry = read(typed)
    if (entry === null) return say('field.not-a-number', { example: inLine(show(limit.step)) })
    if (entry >= limit.min && entry <= limit.max) return null
    return say('field.outside', { min: inLine(show(limit.min)), max: inLine(show(limit.max)) })
  }
  return (
    <TextField
      {...(id !== undefined && { id })}
      name={name}
      value={value === null ? '' : show(value).figure}
      most={24}
      unit={show(value ?? limit.step).unit}
      keyboard="decimal"
      refuse={refuse}
      help={help}
      onChange={(typed) => {
        onChange(typed === '' ? null : read(typed))
      }}
    />
  )
}
