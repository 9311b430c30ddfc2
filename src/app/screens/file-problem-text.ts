import type { FileProblem } from '../state/file-actions.ts'
import { say } from '../words/catalogue.ts'
import { showNumber } from '../words/locale.ts'

const MEGABYTE = 1024 * 1024

/** What is wrong with a file, and that nothing changed. */
export function fileProblemText(problem: FileProblem): string {
  switch (problem.kind) {
    case 'too-big':
      return say('file.too-big', {
        size: showNumber(problem.sizeBytes / MEGABYTE, 1),
        most: showNumber(problem.mostBytes / MEGABYTE, 0),
      })
    case 'not-ours':
      return say('file.not-ours')
    case 'damaged':
      return say('file.damaged', { field: problem.field })
    case 'gap':
      return say('file.gap')
    case 'newer':
      return say('file.newer', { theirVersion: problem.theirVersion, ourVersion: problem.ourVersion })
    default:
      return problem satisfies never
  }
}
