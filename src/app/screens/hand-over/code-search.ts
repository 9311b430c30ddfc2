import type { FileProblem } from '../../state/file-actions.ts'
import { codeTools, takeHandOver, takeLink, type CameraProblem } from '../../state/hand-over-actions.ts'

/** A breath between two looks, so that the screen stays quick on an old phone. */
const PAUSE_MS = 40
/** The longest side that a look takes in: enough for the densest code that is shown, held to fill the picture. */
const LOOK_PX = 900

export interface SearchNews {
  readonly camera: (state: CameraProblem | 'looking') => void
  readonly progress: (progress: { readonly have: number; readonly need: number }) => void
  readonly problem: (problem: FileProblem | 'no-code' | null) => void
  readonly taken: (planId: string) => void
}

export interface CodeSearch {
  /** Looks at what a camera sees until a plan is whole; gives back what stops it. */
  readonly watch: (video: HTMLVideoElement) => () => void
  /** Looks for codes in pictures from files; what was found before stays. */
  readonly takePhotos: (files: Iterable<File>) => Promise<void>
}

/** A search for a plan in codes, from a camera and from pictures together. */
export function startCodeSearch(news: SearchNews): CodeSearch {
  const loading = load()

  /** Whether this text ended the search: with a plan, or with what is wrong with it. */
  const heed = async (text: string): Promise<boolean> => {
    const { collector } = await loading
    const [link] = /#\/take\/[\w-]+$/.exec(text) ?? []
    const got = link === undefined ? collector.take(text) : null
    if (got !== null) news.progress({ have: got.have, need: got.need })
    const bytes = got?.bytes ?? null
    if (link === undefined && bytes === null) return false
    const outcome = link === undefined ? bytes && (await takeHandOver(bytes)) : await takeLink(link)
    if (outcome?.ok === true) news.taken(outcome.value)
    else news.problem(outcome?.problems[0] ?? null)
    return true
  }

  const look = async (video: HTMLVideoElement, signal: AbortSignal) => {
    const { read, openCamera, closeCamera, pixelsOf } = await loading
    const stream = await openCamera()
    if (typeof stream === 'string') {
      if (!signal.aborted) news.camera(stream)
      return
    }
    signal.addEventListener('abort', () => {
      closeCamera(stream)
    })
    if (signal.aborted) closeCamera(stream)
    video.srcObject = stream
    await video.play().catch(() => {})
    for (let isDone = signal.aborted; !isDone;) {
      news.camera('looking')
      const pixels = pixelsOf(video, video.videoWidth, video.videoHeight, LOOK_PX)
      const text = pixels === null ? null : await read(pixels)
      isDone = signal.aborted || (text !== null && (await heed(text)))
      await new Promise((resolve) => {
        setTimeout(resolve, PAUSE_MS)
      })
    }
    closeCamera(stream)
  }

  return {
    watch: (video) => {
      const stopping = new AbortController()
      void look(video, stopping.signal)
      return () => {
        stopping.abort()
      }
    },
    takePhotos: async (files) => {
      news.problem(null)
      const { read, pixelsOfPhoto } = await loading
      let found = 0
      for (const file of files)
        for await (const pixels of pixelsOfPhoto(file)) {
          const text = await read(pixels)
          if (text === null) continue
          found++
          if (await heed(text)) return
          break
        }
      if (found === 0) news.problem('no-code')
    },
  }
}

async function load() {
  const made = await codeTools()
  return { ...made, read: await made.codeReader(), collector: made.collectFrames() }
}
