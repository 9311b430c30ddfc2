import { useCallback, useRef } from 'react'
import { Course } from '../../parts/Course.tsx'
import { FileButton } from '../../parts/FileButton.tsx'
import { Header } from '../../parts/Header.tsx'
import { NoticeBox } from '../../parts/NoticeBox.tsx'
import { useWords } from '../../words/use-words.tsx'
import { useStayAwake } from '../build/use-stay-awake.ts'
import { fileProblemText } from '../file-problem-text.ts'
import { OpenFileButton } from '../front/OpenFileButton.tsx'
import { Page } from '../Page.tsx'
import { FRONT, placeHref, SCAN } from '../route.ts'
import { replaceWith } from '../use-route.ts'
import './hand-over.css'
import { useScan } from './use-scan.ts'

const MOST_BLOCKS = 24

/** Reads a plan from the codes on another phone's screen, or from pictures of them. */
export function ScanScreen() {
  const { say } = useWords()
  useStayAwake()
  const video = useRef<HTMLVideoElement>(null)
  const onTaken = useCallback((planId: string) => {
    replaceWith(placeHref(planId, 'plan'))
  }, [])
  const { camera, progress, problem, takePhotos } = useScan(video, onTaken)
  const isCamera = camera === 'looking' || camera === 'starting'
  const blocks = Math.min(MOST_BLOCKS, progress?.need ?? 1)
  return (
    <Page
      path={SCAN}
      title={`${say('scan.title')} · ${say('app.name')}`}
      kind="single"
      header={
        <Header title={<h1>{say('scan.title')}</h1>} back={{ href: FRONT, label: say('app.close'), icon: 'close' }} />
      }
    >
      {isCamera ? (
        <div className="camera">
          <video ref={video} muted playsInline aria-label={say('scan.camera')} />
        </div>
      ) : (
        <NoticeBox icon="caution" tone="lost">
          {say(`scan.camera.${camera}`)}
        </NoticeBox>
      )}
      <p role="status">
        {progress === null
          ? say(isCamera ? 'scan.how' : 'scan.how-else')
          : say('scan.progress', { have: progress.have, need: progress.need })}
      </p>
      {progress !== null && (
        <Course
          of={blocks}
          laid={Math.floor((progress.have / progress.need) * blocks)}
          inHand
          label={say('scan.progress', { have: progress.have, need: progress.need })}
        />
      )}
      {problem !== null && (
        <NoticeBox icon="problem" tone="lost">
          {problem === 'no-code' ? say('scan.no-code') : fileProblemText(problem)}
        </NoticeBox>
      )}
      <div className="course-row">
        <FileButton shape="over" icon="scan" label={say('scan.photo')} accept="image/*" multiple onFiles={takePhotos} />
        <OpenFileButton />
      </div>
      <p className="quiet">{say('scan.stays')}</p>
    </Page>
  )
}
