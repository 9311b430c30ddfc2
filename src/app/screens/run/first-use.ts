import type { FiringLog } from '../../../core/schedule/firing-log.ts'
import type { WorkedOut } from '../../../core/work-out.ts'

/** The day on which the kiln was first used: the first firing written down, else the tick of its first small fires; null while it is only planned. */
export const firstUse = ({ plan }: WorkedOut, log: FiringLog): string | null =>
  log.firings[0]?.firing.day ?? plan.build.ticks['first-fires']?.day ?? null
