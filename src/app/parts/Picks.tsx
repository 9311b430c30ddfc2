import { useId, type ReactNode } from 'react'
import { Icon } from './Icon.tsx'
import './picks.css'

export interface Choice<K extends string> {
  readonly key: K
  readonly title: string
  readonly detail?: string
  readonly picture?: ReactNode
}

/** Choice cards: the picture is the answer, the chosen card's lines run past its corners. */
export function Picks<K extends string>({
  name,
  choices,
  chosen,
  onChoose,
  isNameShown = true,
}: {
  readonly name: string
  readonly choices: readonly Choice<K>[]
  readonly chosen: K | null
  readonly onChoose: (key: K) => void
  readonly isNameShown?: boolean
}) {
  const group = useId()
  return (
    <fieldset>
      <legend className={isNameShown ? 'picks-name' : 'hide'}>{name}</legend>
      <div className="picks">
        {choices.map(({ key, title, detail, picture }) => (
          <label key={key} className={key === chosen ? 'pick on' : 'pick'}>
            <input
              type="radio"
              name={group}
              checked={key === chosen}
              onChange={() => {
                onChoose(key)
              }}
            />
            {picture}
            {key === chosen && (
              <span className="tag">
                <Icon name="tick" />
              </span>
            )}
            <strong>{title}</strong>
            {detail !== undefined && <span className="detail">{detail}</span>}
          </label>
        ))}
      </div>
    </fieldset>
  )
}

/** One of a few, side by side as blocks in a course. */
export function Segments<K extends string>({
  name,
  choices,
  chosen,
  onChoose,
  isNameShown = false,
}: {
  readonly name: string
  readonly choices: readonly { readonly key: K; readonly label: string }[]
  readonly chosen: K
  readonly onChoose: (key: K) => void
  readonly isNameShown?: boolean
}) {
  const group = useId()
  return (
    <fieldset>
      <legend className={isNameShown ? 'picks-name' : 'hide'}>{name}</legend>
      <div className="seg">
        {choices.map(({ key, label }) => (
          <label key={key} className={key === chosen ? 'on' : ''}>
            <input
              type="radio"
              name={group}
              checked={key === chosen}
              onChange={() => {
                onChoose(key)
              }}
            />
            <span>{label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
