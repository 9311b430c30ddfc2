import { useState } from 'react'
import { Button, LinkButton } from '../../parts/Button.tsx'
import { Header } from '../../parts/Header.tsx'
import { NoticeBox } from '../../parts/NoticeBox.tsx'
import { Segments } from '../../parts/Picks.tsx'
import { TickRow } from '../../parts/TickRow.tsx'
import type { Private } from '../../state/file-actions.ts'
import { useApp } from '../../state/use-app.ts'
import { showWhen } from '../../words/dates.ts'
import { useWords } from '../../words/use-words.tsx'
import { SunTool } from '../build/SunTool.tsx'
import { useStayAwake } from '../build/use-stay-awake.ts'
import { Page } from '../Page.tsx'
import { FRONT, handOverHref, placeHref } from '../route.ts'
import { useNow } from '../use-now.ts'
import { CodeShow } from './CodeShow.tsx'
import './hand-over.css'
import { OfficeShare } from './OfficeShare.tsx'
import { OtherWays } from './OtherWays.tsx'
import { ReceiptsSize } from './ReceiptsSize.tsx'
import { sizeText } from './size-text.ts'
import { useOffer } from './use-offer.ts'

/** Hands a plan to another phone: by a code on the screen, as a file or as a link. None of them needs a network. */
export function HandOver({ planId }: { readonly planId: string }) {
  const words = useWords()
  const { say } = words
  const name = useApp(({ rows }) => rows.find(({ id }) => id === planId)?.name) ?? ''
  const nowMs = useNow()
  useStayAwake()
  const [chosen, setChosen] = useState<Private>({ names: false, receipts: false })
  const [part, setPart] = useState<'whole' | 'changes'>('whole')
  const [round, setRound] = useState(0)
  const ready = useOffer(planId, chosen, part === 'changes', round)
  const head = (
    <Header
      title={<h1>{say('hand-over.title')}</h1>}
      back={{ href: placeHref(planId, 'plan'), label: say('app.close'), icon: 'close' }}
      tools={<SunTool />}
    />
  )
  const page = {
    path: handOverHref(planId),
    title: `${say('hand-over.title')} · ${say('app.name')}`,
    kind: 'single',
  } as const
  if (ready === 'gone')
    return (
      <Page {...page} header={head}>
        <p>{say('app.no-such-plan')}</p>
        <LinkButton href={FRONT}>{say('app.to-plans')}</LinkButton>
      </Page>
    )
  const offer = ready?.offer
  return (
    <Page
      {...page}
      header={head}
      foot={
        <footer className="dock">
          <Button
            tone="fire"
            shape="big"
            icon="tick"
            disabled={!offer || offer.isNothing}
            onPress={() =>
              void offer?.arrived().then(() => {
                setPart('changes')
                setRound((before) => before + 1)
              })
            }
          >
            {say('hand-over.arrived')}
          </Button>
        </footer>
      }
    >
      <p>
        <b>{name}</b>
      </p>
      {offer?.isNothing === true ? (
        <NoticeBox icon="tick">{say('hand-over.nothing-new', { when: showWhen(offer.lastMs ?? 0, nowMs) })}</NoticeBox>
      ) : (
        <>
          {ready && offer?.frames && (
            <CodeShow key={offer.frames.text(0)} frames={offer.frames} codeOf={ready.codeOf} />
          )}
          {offer?.frames === null && <NoticeBox icon="info">{say('hand-over.too-big-for-codes')}</NoticeBox>}
          <p>{say('hand-over.how')}</p>
          <p role="status">
            {offer &&
              say('hand-over.size', { size: sizeText(offer.sizeBytes, words), codes: offer.frames?.count ?? 0 })}
          </p>
        </>
      )}
      {offer && offer.lastMs !== null && (
        <Segments
          name={say('hand-over.what')}
          isNameShown
          choices={[
            { key: 'whole', label: say('hand-over.whole') },
            { key: 'changes', label: say('hand-over.changes', { when: showWhen(offer.lastMs, nowMs) }) },
          ]}
          chosen={part}
          onChoose={setPart}
        />
      )}
      <div>
        <TickRow
          isOn={chosen.names}
          onTick={(names) => {
            setChosen({ ...chosen, names })
          }}
        >
          {say('hand-over.names')}
        </TickRow>
        <TickRow
          isOn={chosen.receipts}
          onTick={(receipts) => {
            setChosen({ ...chosen, receipts })
          }}
        >
          {say('hand-over.receipts')}
        </TickRow>
        {chosen.receipts && <ReceiptsSize planId={planId} />}
      </div>
      <p className="quiet">{say('hand-over.private-why')}</p>
      <NoticeBox icon="share">{say('hand-over.both-kept')}</NoticeBox>
      {offer && !offer.isNothing && <OtherWays key={round} planId={planId} name={name} chosen={chosen} offer={offer} />}
      <OfficeShare planId={planId} />
      <p className="quiet">{say('hand-over.arrived-why')}</p>
    </Page>
  )
}
