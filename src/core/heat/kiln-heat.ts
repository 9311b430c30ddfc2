import { wholeNear } from '../basics/count.ts'
import type { Derived } from '../basics/derived.ts'
import { findingsOn, type Finding } from '../basics/finding.ts'
import type { TrayFrame } from '../fish/tray-frame.ts'
import type { Plan } from '../plan/schema.ts'
import { airFindings } from './air-findings.ts'
import { compareFillings, type FillingWorth } from './compare-fillings.ts'
import { breezePressure, kilnDraught } from './draught.ts'
import { wallMoments } from './firing-heat.ts'
import { HEAT_DATA } from './heat-data.ts'
import type { HeatMoment } from './conduct.ts'

/** Everything about heat that a screen shows. It takes some hundredths of a second: work it out where it is shown, and keep it. */
export interface KilnHeatReport {
  readonly fillings: readonly FillingWorth[]
  /** Faces of the wall as planned, from a cold start. */
  readonly moments: readonly HeatMoment[]
  readonly draught: Derived<'Pa'>
  /** Pressure of a light breeze on the fire openings, to set beside the draught. */
  readonly breeze: Derived<'Pa'>
  readonly findings: readonly Finding[]
}

/**
 * What each filling of the units is worth, the faces of the wall over a firing, and the draught beside a light
 * breeze, Pa.
 */
export function kilnHeat(plan: Plan, frame: TrayFrame): KilnHeatReport {
  const fillings = compareFillings(plan)
  const current = fillings.find((one) => one.current) ?? fillings[0]
  if (current === undefined) throw new Error('a wall has no filling to compare')
  return {
    fillings,
    moments: wallMoments(plan, current.filling, HEAT_DATA.fireZone.hotterHighK),
    draught: kilnDraught(plan, frame),
    breeze: breezePressure(),
    findings: [outsideFinding(current), ...airFindings(plan)],
  }
}

const finding = findingsOn('walls')

/** The outer face against what a bare hand bears: a touch of a second, or a minute. Thresholds in the way of ISO 13732-1, from memory. */
function outsideFinding({ cold, repeated }: FillingWorth): Finding {
  const degC = wholeNear(Math.max(cold.peakOutside.value, repeated.peakOutside.value))
  const { minuteDegC, secondDegC } = HEAT_DATA.burn
  if (degC >= secondDegC) return finding('caution', 'outside-burns-touch', { degC, limit: secondDegC })
  if (degC >= minuteDegC) return finding('caution', 'outside-burns-minute', { degC, limit: minuteDegC })
  return finding('good', 'outside-bearable', { degC, limit: minuteDegC })
}
