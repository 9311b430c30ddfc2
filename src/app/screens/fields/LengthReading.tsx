import type { ReactNode } from 'react'
import { LIMITS, type LimitedField } from '../../../core/plan/limits.ts'
import { TextField } from '../../parts/TextField.tsx'
import { readLength, showLength } from '../../words/length.ts'
import { inLine } from '../../words/show.ts'
import { useWords } from '../../words/use-words.tsx'

/** A length that was read on the site, or not yet: an empty box is no reading. */
export function LengthReading({
  id,
  name,
  lengthM,
  limit,
  help,
  onChange,
}: {
  readonly id: string
  readonly name: string
  readonly lengthM: number | null
  readonly limit: LimitedField
  readonly help?: ReactNode
  readonly onChange: (lengthM: number | null) => void
}) {
  const { say, show, length } = useWords()
  const { min, max } = LIMITS[limit]
  const shown = lengthM === null ? null : showLength(lengthM, show, true)
  const refuse = (typed: string): string | null => {
    if (typed === '') return null
    const read = readLength(typed, show)
    if (read === null) return say('field.not-a-number', { example: length(1.234) })
    return read >= min && read <= max ? null : say('field.outside', { min: length(min), max: length(max) })
  }
  return (
    <TextField
      id={id}
      name={name}
      value={shown === null ? '' : show.length === 'ft-in' ? inLine(shown) : shown.figure}
      most={24}
      unit={show.length === 'ft-in' ? '' : (shown?.unit ?? showLength(1, show, true).unit)}
      keyboard={show.length === 'ft-in' ? 'text' : 'decimal'}
      refuse={refuse}
      help={help}
      onChange={(typed) => {
        onChange(typed === '' ? null : readLength(typed, show))
      }}
    />
  )
}
