import { useState } from 'react'
import { Button, LinkButton } from '../../parts/Button.tsx'
import { Empty } from '../../parts/Empty.tsx'
import { Header } from '../../parts/Header.tsx'
import { Icon } from '../../parts/Icon.tsx'
import { NoticeBox } from '../../parts/NoticeBox.tsx'
import type { PlanRow } from '../../state/app-state.ts'
import { useApp } from '../../state/use-app.ts'
import { useWords } from '../../words/use-words.tsx'
import { LanguageChoice } from '../LanguageChoice.tsx'
import { Page } from '../Page.tsx'
import { FRONT, HOW, NEW, SCAN, SETTINGS, TRADE_WORDS } from '../route.ts'
import { ExampleSheet } from './ExampleSheet.tsx'
import { BackUpNudge } from './BackUpNudge.tsx'
import './front.css'
import { Mark } from './Mark.tsx'
import { OfflineLine } from './OfflineLine.tsx'
import { OpenFileButton } from './OpenFileButton.tsx'
import { PlanShelf } from './PlanShelf.tsx'
import { PlanTools } from './PlanTools.tsx'

/** The plans on this phone, each with a small drawing to one scale, and the ways to get another. */
export function FrontPage() {
  const { say } = useWords()
  const rows = useApp((state) => state.rows)
  const storage = useApp((state) => state.storage)
  const [isChoosing, setIsChoosing] = useState(false)
  const [tooled, setTooled] = useState<PlanRow | null>(null)
  return (
    <Page
      path={FRONT}
      title={`${say('front.title')} · ${say('app.name')}`}
      kind="single"
      header={
        <Header
          title={
            <span className="brand">
              <Mark /> {say('app.name')}
            </span>
          }
          tools={
            <a href={SETTINGS} aria-label={say('front.settings')}>
              <Icon name="sun" />
            </a>
          }
        />
      }
      foot={
        <footer className="dock">
          <LinkButton href={NEW} tone="fire" shape="big" icon="plus">
            {say('front.new')}
          </LinkButton>
          <div className="course-row">
            <LinkButton href={SCAN} shape="over" icon="scan">
              {say('front.scan')}
            </LinkButton>
            <OpenFileButton />
            <Button
              shape="over"
              icon="block"
              onPress={() => {
                setIsChoosing(true)
              }}
            >
              {say('front.example')}
            </Button>
          </div>
        </footer>
      }
    >
      <h1>{say('front.title')}</h1>
      <p className="print-only">{say('front.print-none')}</p>
      {(storage === 'memory-only' || storage === 'newer') && (
        <NoticeBox icon="lost" tone="lost">
          {say(`keeping.storage.${storage}`)}
        </NoticeBox>
      )}
      {rows.length === 0 ? (
        <Empty title={say('front.empty')} picture={<Mark />}>
          {say('front.empty-why')}
        </Empty>
      ) : (
        <PlanShelf rows={rows} onTools={setTooled} />
      )}
      <div className="choices">
        <LinkButton href={HOW} icon="run">
          {say('front.how')}
        </LinkButton>
        <LinkButton href={TRADE_WORDS} icon="words">
          {say('front.terms')}
        </LinkButton>
      </div>
      <BackUpNudge />
      <OfflineLine />
      <LanguageChoice />
      {isChoosing && (
        <ExampleSheet
          onClose={() => {
            setIsChoosing(false)
          }}
        />
      )}
      {tooled && (
        <PlanTools
          row={tooled}
          onClose={() => {
            setTooled(null)
          }}
        />
      )}
    </Page>
  )
}
