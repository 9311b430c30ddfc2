import { useEffect, useState } from 'react'
import { Button } from '../../parts/Button.tsx'
import { Course } from '../../parts/Course.tsx'
import type { codeTools, HandOverOffer } from '../../state/hand-over-actions.ts'
import { useWords } from '../../words/use-words.tsx'
import { Code } from './Code.tsx'

/** As many codes a second as an old phone's camera and reader keep up with, and as few as a hand that shakes needs. */
const USUAL_MS = 220
const SLOW_MS = 600
/** Blocks of the course that shows how far the round has come. */
const MOST_BLOCKS = 12

/** The codes in turn, round and round, until the other phone has enough of them. */
export function CodeShow({
  frames,
  codeOf,
}: {
  readonly frames: NonNullable<HandOverOffer['frames']>
  readonly codeOf: Awaited<ReturnType<typeof codeTools>>['codeOf']
}) {
  const { say } = useWords()
  const [frame, setFrame] = useState(0)
  const [isGoing, setIsGoing] = useState(true)
  const [isSlow, setIsSlow] = useState(() => window.matchMedia('(prefers-reduced-motion: reduce)').matches)
  const { count } = frames
  useEffect(() => {
    if (count === 1 || !isGoing) return
    const timer = setInterval(
      () => {
        setFrame((shown) => shown + 1)
      },
      isSlow ? SLOW_MS : USUAL_MS,
    )
    return () => {
      clearInterval(timer)
    }
  }, [count, isGoing, isSlow])
  const inRound = (frame % count) + 1
  const blocks = Math.min(MOST_BLOCKS, count)
  return (
    <>
      <Code
        rows={codeOf(frames.text(frame))}
        label={count === 1 ? say('hand-over.one-code') : say('hand-over.code-of', { number: inRound, count })}
      />
      {count > 1 && (
        <>
          <Course
            of={blocks}
            laid={Math.ceil((inRound / count) * blocks) - 1}
            inHand
            label={say('hand-over.code-of', { number: inRound, count })}
          />
          <div className="course-row">
            <Button
              onPress={() => {
                setIsGoing(!isGoing)
              }}
            >
              {say(isGoing ? 'hand-over.pause' : 'hand-over.go-on')}
            </Button>
            <Button
              tone={isSlow ? 'solid' : 'plain'}
              onPress={() => {
                setIsSlow(!isSlow)
              }}
            >
              {say('hand-over.slower')}
            </Button>
          </div>
        </>
      )}
    </>
  )
}
