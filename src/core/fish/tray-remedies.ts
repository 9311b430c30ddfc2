import { wholeModulesIn } from '../basics/count.ts'
import type { Remedy } from '../basics/finding.ts'
import { LIMITS } from '../plan/limits.ts'

/** A handle that a gloved hand can close around. Common practice. */
export const LEAST_HANDLE_M = 0.1

/** A length brought down to whole millimetres, m. */
export const downToMm = (lengthM: number): number => wholeModulesIn(lengthM, 0.001) / 1000

/** Handles of another length, m; nothing where a plan cannot have them so long. */
export const handleRemedy = (handleM: number): Remedy[] =>
  handleM > LIMITS['trays.handleM'].max
    ? []
    : [
        {
          kind: 'set-handle',
          args: { handle: { value: handleM, unit: 'm' } },
          set: { 'trays.handleM': handleM },
        },
      ]

/** Chambers of another clear side, m; nothing where a kiln cannot be so small. */
export const clearSideRemedy = (sideM: number): Remedy[] =>
  sideM < LIMITS['chambers.clearSideM'].min
    ? []
    : [
        {
          kind: 'set-clear-side',
          args: { side: { value: sideM, unit: 'm' } },
          set: { 'chambers.clearSideM': sideM },
        },
      ]
