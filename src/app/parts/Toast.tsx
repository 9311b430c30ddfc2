import { useEffect, useRef } from 'react'
import { Button } from './Button.tsx'
import './notices.css'

const SHOWN_MS = 10_000

/** What just happened and, perhaps, the way back; gone after ten seconds, unless a finger or the focus is on it. */
export function Toast({
  text,
  undo,
  onGone,
}: {
  readonly text: string
  readonly undo?: { readonly label: string; readonly onUndo: () => void } | undefined
  readonly onGone: () => void
}) {
  const box = useRef<HTMLDivElement>(null)
  const gone = useRef(onGone)
  useEffect(() => {
    gone.current = onGone
  })
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout>
    const end = () => {
      if (box.current?.matches(':hover, :focus-within') === true) timer = setTimeout(end, 1000)
      else gone.current()
    }
    timer = setTimeout(end, SHOWN_MS)
    return () => {
      clearTimeout(timer)
    }
  }, [text])
  return (
    <div className="toast" role="status" ref={box}>
      <p>{text}</p>
      {undo && (
        <Button
          icon="undo"
          onPress={() => {
            undo.onUndo()
            onGone()
          }}
        >
          {undo.label}
        </Button>
      )}
    </div>
  )
}
