import { Component, type ReactNode } from 'react'
import { Button, LinkButton } from '../parts/Button.tsx'
import { say } from '../words/catalogue.ts'
import { savePlanFile } from '../state/save-plan-file.ts'
import { FRONT } from './route.ts'

interface Props {
  /** The plan that was open, to take a copy of. */
  readonly planId: string | null
  readonly children: ReactNode
}

/** Catches a fault of the app itself: says so, keeps the work in reach, and lets one start again. */
export class Crash extends Component<Props, { readonly error: Error | null }> {
  override state = { error: null as Error | null }

  static getDerivedStateFromError(error: unknown) {
    return { error: error instanceof Error ? error : new Error(String(error)) }
  }

  override render() {
    const { error } = this.state
    const { planId, children } = this.props
    if (error === null) return children
    return (
      <main className="crash stack" role="alert">
        <h1>{say('app.broke')}</h1>
        <p>{say('app.broke-why')}</p>
        {planId !== null && (
          <Button tone="fire" shape="big" icon="file" onPress={() => void savePlanFile(planId)}>
            {say('app.take-copy')}
          </Button>
        )}
        <Button
          shape="big"
          onPress={() => {
            window.location.reload()
          }}
        >
          {say('app.start-again')}
        </Button>
        <LinkButton href={FRONT} shape="big">
          {say('app.to-plans')}
        </LinkButton>
        <p className="quiet">{say('app.broke-said', { message: error.message })}</p>
      </main>
    )
  }
}
