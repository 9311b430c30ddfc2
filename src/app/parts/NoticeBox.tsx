import type { ReactNode } from 'react'
import { Icon, type IconName } from './Icon.tsx'
import './notices.css'

/** Something to know that stays until it is no longer true. */
export function NoticeBox({
  icon,
  tone = 'plain',
  children,
  action,
}: {
  readonly icon: IconName
  readonly tone?: 'plain' | 'lost'
  readonly children: ReactNode
  readonly action?: ReactNode
}) {
  return (
    <div className={tone === 'lost' ? 'notice lost' : 'notice'} role={tone === 'lost' ? 'alert' : undefined}>
      <Icon name={icon} />
      <p>{children}</p>
      {action}
    </div>
  )
}
