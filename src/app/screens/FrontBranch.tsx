import type { ReactNode } from 'react'
import { Header } from '../parts/Header.tsx'
import { useWords } from '../words/use-words.tsx'
import { Page } from './Page.tsx'
import { FRONT } from './route.ts'

/** A page that belongs to no plan: its name in the title block, and the way back to the plans. */
export function FrontBranch({
  path,
  title,
  children,
}: {
  readonly path: string
  readonly title: string
  readonly children: ReactNode
}) {
  const { say } = useWords()
  return (
    <Page
      path={path}
      title={`${title} · ${say('app.name')}`}
      kind="single"
      header={<Header title={<h1>{title}</h1>} back={{ href: FRONT, label: say('app.back-to-plans') }} />}
    >
      {children}
    </Page>
  )
}
