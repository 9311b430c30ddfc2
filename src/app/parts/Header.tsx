import type { ReactNode } from 'react'
import './header.css'
import { Icon } from './Icon.tsx'

/** How safe the work is: a peg that stands, a peg that was pulled, or words alone while it is being driven. */
export interface SafetyLine {
  readonly kind: 'safe' | 'lost' | 'plain'
  readonly text: string
}

/** The title block: a way back, the name over the truth about its safety, and one or two tools. */
export function Header({
  title,
  safety,
  back,
  tools,
}: {
  readonly title: ReactNode
  readonly safety?: SafetyLine | undefined
  readonly back?: { readonly href: string; readonly label: string; readonly icon?: 'back' | 'close' } | undefined
  readonly tools?: ReactNode
}) {
  return (
    <header className="title-block">
      {back && (
        <a href={back.href} aria-label={back.label}>
          <Icon name={back.icon ?? 'back'} />
        </a>
      )}
      <div className="title-main">
        {title}
        {safety && <Safety line={safety} />}
      </div>
      {tools}
    </header>
  )
}

function Safety({ line }: { readonly line: SafetyLine }) {
  return (
    <span className={`safe ${line.kind}`} role={line.kind === 'lost' ? 'alert' : undefined}>
      {line.kind !== 'plain' && <Icon name={line.kind === 'safe' ? 'saved' : 'lost'} />}
      <span>{line.text}</span>
    </span>
  )
}
