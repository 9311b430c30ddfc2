import { useEffect, useId, useRef, useState, type KeyboardEvent, type ReactNode } from 'react'
import './field.css'
import { Icon } from './Icon.tsx'
import { isAt, stepped } from './stepping.ts'
import { useHold } from './use-hold.ts'

/** After this pause a typed number that holds is taken, so that the drawing and the money follow while one types. */
const PAUSE_MS = 450

export interface StepperText {
  /** Figure and unit of a value, as shown in the box. */
  readonly show: (value: number) => { readonly figure: string; readonly unit: string }
  readonly read: (typed: string) => number | null
  /** Beside the field when what was typed is no number, or lies outside. */
  readonly notANumber: string
  readonly outside: string
  readonly less: string
  readonly more: string
  readonly atLeast: string
  readonly atMost: string
}

/**
 * A number that one types, steps or holds. What is typed stays as typed until the field is left; a refusal stands beside it with the limits, and
 * the typed text is kept.
 */
export function Stepper({
  name,
  value,
  min,
  max,
  step,
  text,
  onChange,
  refuse,
  help,
  keyboard = 'decimal',
  id,
}: {
  readonly name: string
  readonly value: number
  readonly min: number
  readonly max: number
  readonly step: number
  readonly text: StepperText
  readonly onChange: (value: number) => void
  /** A reason of the whole plan against a value within the limits, or null. */
  readonly refuse?: (value: number) => string | null
  readonly help?: ReactNode
  readonly keyboard?: 'decimal' | 'numeric' | 'text'
  readonly id?: string
}) {
  const own = useId()
  const field = id ?? own
  const [typed, setTyped] = useState<string | null>(null)
  const [refusal, setRefusal] = useState<string | null>(null)
  const [isIn, setIsIn] = useState(false)
  const [last, setLast] = useState(value)
  const pause = useRef<ReturnType<typeof setTimeout> | undefined>(undefined)
  const shown = text.show(value)
  if (value !== last) {
    // The value changed from elsewhere (undo, a remedy, another phone): what stands here refused is out of date.
    setLast(value)
    setRefusal(null)
    if (!isIn) setTyped(null)
  }
  useEffect(() => () => clearTimeout(pause.current), [])
  const whole = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (refusal !== null) whole.current?.scrollIntoView({ block: 'nearest' })
  }, [refusal])

  const judge = (read: number | null): string | null => {
    if (read === null) return text.notANumber
    if (read < min - step * 1e-9 || read > max + step * 1e-9) return text.outside
    return refuse?.(read) ?? null
  }
  const take = (entry: string, isLeaving: boolean) => {
    clearTimeout(pause.current)
    if (entry.trim() === shown.figure || entry === '') {
      setRefusal(null)
      if (isLeaving) setTyped(null)
      return
    }
    const read = text.read(entry)
    const reason = judge(read)
    if (reason === null && read !== null) {
      setRefusal(null)
      if (isLeaving) setTyped(null)
      if (read !== value) onChange(Math.min(max, Math.max(min, read)))
    } else if (isLeaving) setRefusal(reason)
  }
  const go = (direction: 1 | -1) => (): boolean => {
    if (isAt(value, direction > 0 ? max : min, step)) return false
    clearTimeout(pause.current)
    const next = stepped(value, step, direction, min, max)
    const reason = refuse?.(next) ?? null
    setTyped(null)
    setRefusal(reason)
    if (reason !== null) return false
    onChange(next)
    return true
  }
  const less = useHold(go(-1))
  const more = useHold(go(1))
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === 'Enter') take(event.currentTarget.value, true)
    if (event.key === 'ArrowUp') go(1)()
    if (event.key === 'ArrowDown') go(-1)()
    if (event.key === 'ArrowUp' || event.key === 'ArrowDown') event.preventDefault()
    if (event.key === 'Escape' && typed !== null) {
      event.preventDefault()
      event.stopPropagation()
      setTyped(null)
      setRefusal(null)
    }
  }
  const atMin = isAt(value, min, step)
  const atMax = isAt(value, max, step)
  const edge = atMin ? text.atLeast : atMax ? text.atMost : null
  const note = refusal ?? edge ?? help ?? null
  return (
    <div ref={whole} className={refusal === null ? 'field' : 'field bad'}>
      <label className="field-name" htmlFor={field}>
        {name}
      </label>
      <div className="step">
        <button type="button" aria-label={text.less} aria-disabled={atMin} {...less}>
          <Icon name="minus" />
        </button>
        <label className="typed" htmlFor={field}>
          <input
            id={field}
            type="text"
            inputMode={keyboard}
            autoComplete="off"
            enterKeyHint="done"
            value={typed ?? shown.figure}
            aria-invalid={refusal !== null}
            aria-describedby={`${field}-unit ${field}-note`}
            onFocus={(event) => {
              setIsIn(true)
              event.currentTarget.select()
            }}
            onChange={(event) => {
              const entry = event.currentTarget.value
              setTyped(entry)
              setRefusal(null)
              clearTimeout(pause.current)
              pause.current = setTimeout(() => {
                take(entry, false)
              }, PAUSE_MS)
            }}
            onBlur={(event) => {
              setIsIn(false)
              take(event.currentTarget.value, true)
            }}
            onKeyDown={onKeyDown}
          />
          <span className="of" id={`${field}-unit`}>
            {shown.unit}
          </span>
        </label>
        <button type="button" aria-label={text.more} aria-disabled={atMax} {...more}>
          <Icon name="plus" />
        </button>
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
