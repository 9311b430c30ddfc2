/** A share of a step that is still on the step: steps are typed as decimals, which no machine keeps exactly. */
const ON_STEP = 1e-6

/** The next whole step above or below, kept within the limits: 0.683 steps up by 0.01 to 0.69, and 0.69 to 0.70. */
export function stepped(value: number, step: number, direction: 1 | -1, min: number, max: number): number {
  const steps = value / step
  const next = direction > 0 ? Math.floor(steps + ON_STEP) + 1 : Math.ceil(steps - ON_STEP) - 1
  const places = Math.max(0, Math.ceil(-Math.log10(step)) + 3)
  return Math.min(max, Math.max(min, Number((next * step).toFixed(places))))
}

/** True where a value cannot be told from a limit. */
export const isAt = (value: number, limit: number, step: number): boolean => Math.abs(value - limit) < step * ON_STEP
