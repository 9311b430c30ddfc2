import './bar.css'
import { Icon, type IconName } from './Icon.tsx'

export interface BarPlace {
  readonly key: string
  readonly label: string
  readonly icon: IconName
  readonly href: string
}

/** The places one can be, as blocks in a course. */
export function Bar({
  label,
  places,
  current,
}: {
  readonly label: string
  readonly places: readonly BarPlace[]
  readonly current: string
}) {
  return (
    <nav className="bar" aria-label={label}>
      {places.map((place) => (
        <a key={place.key} href={place.href} aria-current={place.key === current ? 'page' : undefined}>
          <Icon name={place.icon} />
          <span>{place.label}</span>
        </a>
      ))}
    </nav>
  )
}
