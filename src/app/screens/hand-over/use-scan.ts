import { useEffect, useRef, useState, type RefObject } from 'react'
import type { FileProblem } from '../../state/file-actions.ts'
import type { CameraProblem } from '../../state/hand-over-actions.ts'
import { startCodeSearch, type CodeSearch } from './code-search.ts'

export interface Scan {
  readonly camera: CameraProblem | 'starting' | 'looking'
  /** How many parts are there of how many; null before the first. */
  readonly progress: { readonly have: number; readonly need: number } | null
  readonly problem: FileProblem | 'no-code' | null
  readonly takePhotos: (files: Iterable<File>) => Promise<void>
}

/** Reads codes from the camera until a plan is whole, then takes it in and says which plan it was. */
export function useScan(video: RefObject<HTMLVideoElement | null>, onTaken: (planId: string) => void): Scan {
  const [camera, setCamera] = useState<Scan['camera']>('starting')
  const [progress, setProgress] = useState<Scan['progress']>(null)
  const [problem, setProblem] = useState<Scan['problem']>(null)
  const search = useRef<CodeSearch | null>(null)
  useEffect(() => {
    const started = startCodeSearch({ camera: setCamera, progress: setProgress, problem: setProblem, taken: onTaken })
    search.current = started
    return video.current === null ? undefined : started.watch(video.current)
  }, [video, onTaken])
  return {
    camera,
    progress,
    problem,
    takePhotos: async (files) => {
      await search.current?.takePhotos(files)
    },
  }
}
