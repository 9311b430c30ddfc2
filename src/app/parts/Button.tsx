import type { ReactNode } from 'react'
import './button.css'
import { Icon, type IconName } from './Icon.tsx'

interface Look {
  /** At most one ember button a screen: the thing to do now. `solid` is a chosen one. */
  readonly tone?: 'plain' | 'fire' | 'solid'
  readonly shape?: 'usual' | 'big' | 'over'
  readonly icon?: IconName
  readonly children: ReactNode
}

const classes = ({ tone = 'plain', shape = 'usual' }: Look) =>
  ['btn', tone !== 'plain' && tone, shape !== 'usual' && shape].filter(Boolean).join(' ')

/** A block to press. A disabled one carries its reason as its text. */
export function Button({
  onPress,
  disabled = false,
  label,
  ...look
}: Look & { readonly onPress?: () => void; readonly disabled?: boolean; readonly label?: string }) {
  return (
    <button type="button" className={classes(look)} onClick={onPress} disabled={disabled} aria-label={label}>
      {look.icon && <Icon name={look.icon} />}
      <span>{look.children}</span>
    </button>
  )
}

/** A block that leads somewhere. */
export function LinkButton({ href, ...look }: Look & { readonly href: string }) {
  return (
    <a className={classes(look)} href={href}>
      {look.icon && <Icon name={look.icon} />}
      <span>{look.children}</span>
    </a>
  )
}
