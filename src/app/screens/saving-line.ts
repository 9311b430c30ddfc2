import type { SafetyLine } from '../parts/Header.tsx'
import type { OpenPlan } from '../state/app-state.ts'
import { say } from '../words/catalogue.ts'
import { showWhen } from '../words/dates.ts'

/** The truth about the plan's safety, as the title block says it. */
export function savingLine(saving: OpenPlan['saving'], nowMs: number): SafetyLine {
  switch (saving.kind) {
    case 'saved':
      return { kind: 'safe', text: say('saving.saved', { time: showWhen(saving.atMs, nowMs) }) }
    case 'saving':
      return { kind: 'plain', text: say('saving.saving') }
    case 'not-saved':
      return { kind: 'lost', text: say(`saving.not-saved.${saving.reason}`) }
    case 'memory-only':
      return { kind: 'lost', text: say('saving.memory-only') }
    default:
      return saving satisfies never
  }
}
