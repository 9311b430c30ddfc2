import { useEffect, useState } from 'react'
import { Button, LinkButton } from '../../parts/Button.tsx'
import { Header } from '../../parts/Header.tsx'
import { NoticeBox } from '../../parts/NoticeBox.tsx'
import type { FileProblem } from '../../state/file-actions.ts'
import { lookAtLink, takeLink, type LinkBrings } from '../../state/hand-over-actions.ts'
import { useWords } from '../../words/use-words.tsx'
import { fileProblemText } from '../file-problem-text.ts'
import { Page } from '../Page.tsx'
import { FRONT, placeHref } from '../route.ts'
import { replaceWith } from '../use-route.ts'
import { sizeText } from './size-text.ts'

/** A link that brings a plan: what it brings is shown, and taken when one says so. */
export function TakeScreen({ fragment }: { readonly fragment: string }) {
  const words = useWords()
  const { say } = words
  const [brings, setBrings] = useState<LinkBrings | null>(null)
  const [problem, setProblem] = useState<FileProblem | null>(null)
  useEffect(() => {
    let isHere = true
    void lookAtLink(fragment).then((seen) => {
      if (!isHere) return
      if (seen.ok) setBrings(seen.value)
      else setProblem(seen.problems[0] ?? null)
    })
    return () => {
      isHere = false
    }
  }, [fragment])
  const take = async () => {
    const taken = await takeLink(fragment)
    if (taken.ok) replaceWith(placeHref(taken.value, 'plan'))
    else setProblem(taken.problems[0] ?? null)
  }
  return (
    <Page
      path="#/take"
      title={`${say('take.title')} · ${say('app.name')}`}
      kind="single"
      header={<Header title={<h1>{say('take.title')}</h1>} back={{ href: FRONT, label: say('app.back-to-plans') }} />}
      foot={
        brings &&
        problem === null && (
          <footer className="dock">
            <Button tone="fire" shape="big" icon="tick" onPress={() => void take()}>
              {say(brings.isHere ? 'take.join' : 'take.take')}
            </Button>
          </footer>
        )
      }
    >
      {problem !== null && (
        <>
          <NoticeBox icon="problem" tone="lost">
            {fileProblemText(problem)}
          </NoticeBox>
          <LinkButton href={FRONT}>{say('app.to-plans')}</LinkButton>
        </>
      )}
      {brings && problem === null && (
        <>
          <h2>{brings.name ?? say('take.changes')}</h2>
          <p>{say('take.size', { size: sizeText(brings.sizeBytes, words) })}</p>
          <p>{say(brings.isHere ? 'take.here' : 'take.new')}</p>
        </>
      )}
    </Page>
  )
}
