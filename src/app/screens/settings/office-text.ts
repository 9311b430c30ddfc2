import type { OfficeState } from '../../state/office-actions.ts'
import type { Words } from '../../words/words.ts'

/** How this phone stands with its office. */
export const officeText = ({ kind, plans, isSent }: OfficeState, { say }: Words): string =>
  say(`office.${kind}`, { plans, sent: isSent ? 'yes' : 'no' })
