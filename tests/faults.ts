import { appendFileSync } from 'node:fs'

/**
 * Notes, at the end of a test that has passed, which fault was tried and how often. A test that loses anything fails before it comes here, so that what is noted
 * lost nothing. Where FAULTS_FILE names a file the notes are added to it, a line each.
 */
export function tellFault(fault: string, times: number, slowestMs?: number): void {
  const file = process.env['FAULTS_FILE']
  if (file !== undefined) appendFileSync(file, `${JSON.stringify({ fault, times, slowestMs })}\n`)
}
