import { open as openChecks } from '../../../shared/checks.json?packed'
import { open as openDisagreements } from '../../../shared/disagreements.json?packed'
import { open as openUnsourced } from '../../../shared/unsourced.json?packed'
import { evidenceOf, type Evidence } from '../../core/documents/evidence.ts'

const parsed = async (open: () => Promise<Uint8Array>): Promise<unknown> =>
  JSON.parse(new TextDecoder().decode(await open()))

let asked: Promise<Evidence> | null = null

/** What the numbers were held against, opened from the phone's own store when somebody wants to know. */
export const evidence = (): Promise<Evidence> =>
  (asked ??= Promise.all([openChecks, openDisagreements, openUnsourced].map(parsed)).then(
    ([checks, disagreements, unsourced]) => evidenceOf(checks, disagreements, unsourced),
  ))
