import { Icon } from './Icon.tsx'
import './slider.css'

/** Whole steps of a few, by a sweep or one by one. */
export function Slider({
  name,
  value,
  min,
  max,
  text,
  less,
  more,
  onChange,
}: {
  readonly name: string
  readonly value: number
  readonly min: number
  readonly max: number
  /** What the value means, for whoever hears the screen. */
  readonly text: string
  readonly less: string
  readonly more: string
  readonly onChange: (value: number) => void
}) {
  return (
    <div className="slider">
      <button
        type="button"
        aria-label={less}
        disabled={value <= min}
        onClick={() => {
          onChange(value - 1)
        }}
      >
        <Icon name="minus" />
      </button>
      <input
        type="range"
        aria-label={name}
        aria-valuetext={text}
        min={min}
        max={max}
        step={1}
        value={value}
        onChange={(event) => {
          onChange(event.currentTarget.valueAsNumber)
        }}
      />
      <button
        type="button"
        aria-label={more}
        disabled={value >= max}
        onClick={() => {
          onChange(value + 1)
        }}
      >
        <Icon name="plus" />
      </button>
    </div>
  )
}
