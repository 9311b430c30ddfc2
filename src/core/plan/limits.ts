import type { Unit } from '../basics/unit.ts'

/** How far a typed number may go, in SI, and the step its buttons take. One table for the schema, the fields on the screen and their refusals. */
export interface Limit {
  readonly min: number
  readonly max: number
  readonly unit: Unit
  readonly step: number
}

const limit = (min: number, max: number, unit: Unit, step: number): Limit => ({ min, max, unit, step })
const share = limit(0, 1, '1', 0.01)

/** Largest amount of money a field takes, in minor units. */
export const MOST_MONEY_MINOR = 1e12

export const LIMITS = {
  'catch.freshKgPerDay': limit(1, 5000, 'kg', 5),
  'catch.peakKgPerDay': limit(1, 5000, 'kg', 5),
  'catch.leanKgPerDay': limit(0, 5000, 'kg', 5),
  'catch.firingsPerDay': limit(1, 4, '1', 1),
  'catch.loadKgPerM2': limit(1, 30, 'kg/m2', 0.5),
  'catch.loadKgPerTray': limit(1, 40, 'kg', 0.5),
  'catch.dressingLoss': limit(0, 0.7, '1', 0.01),
  'catch.moistureFresh': limit(0.3, 0.9, '1', 0.01),
  'catch.moistureFinal': limit(0.05, 0.7, '1', 0.01),
  'chambers.count': limit(1, 8, '1', 1),
  'chambers.clearSideM': limit(0.4, 2, 'm', 0.01),
  'walls.unit.lengthM': limit(0.05, 0.6, 'm', 0.001),
  'walls.unit.widthM': limit(0.05, 0.6, 'm', 0.001),
  'walls.unit.heightM': limit(0.05, 0.6, 'm', 0.001),
  'walls.unit.voidFraction': limit(0, 0.6, '1', 0.01),
  'walls.unit.densityKgM3': limit(500, 3000, 'kg/m3', 50),
  'walls.joint.minM': limit(0.003, 0.03, 'm', 0.001),
  'walls.joint.usualM': limit(0.003, 0.03, 'm', 0.001),
  'walls.joint.maxM': limit(0.003, 0.04, 'm', 0.001),
  'walls.aboveM': limit(0.3, 1.5, 'm', 0.01),
  'walls.belowM': limit(0, 1, 'm', 0.01),
  'walls.cutLossM': limit(0, 0.02, 'm', 0.001),
  'walls.liningM': limit(0, 0.1, 'm', 0.005),
  'walls.renderM': limit(0, 0.05, 'm', 0.005),
  'openings.widthM': limit(0.15, 1, 'm', 0.01),
  'openings.heightM': limit(0.15, 1, 'm', 0.01),
  'openings.bearingM': limit(0.05, 0.4, 'm', 0.01),
  'ground.projectionM': limit(0, 0.6, 'm', 0.01),
  'ground.thicknessM': limit(0.05, 0.5, 'm', 0.01),
  'ground.slopeAcross': limit(-0.25, 0.25, '1', 0.01),
  'ground.slopeBack': limit(-0.25, 0.25, '1', 0.01),
  'ground.waterTableM': limit(0, 10, 'm', 0.1),
  'ground.floodM': limit(-5, 5, 'm', 0.1),
  'ground.hardcoreM': limit(0, 0.3, 'm', 0.05),
  'ground.hearthM': limit(0, 0.3, 'm', 0.01),
  'ground.apronM': limit(0, 2, 'm', 0.1),
  'ground.panM3': limit(0.005, 0.05, 'm3', 0.001),
  'ground.barrowM3': limit(0.02, 0.2, 'm3', 0.005),
  'trays.perChamber': limit(1, 15, '1', 1),
  'trays.spares': limit(0, 30, '1', 1),
  'trays.railThicknessM': limit(0.01, 0.08, 'm', 0.001),
  'trays.railDepthM': limit(0.02, 0.12, 'm', 0.005),
  'trays.setbackM': limit(0, 0.2, 'm', 0.005),
  'trays.handleM': limit(0, 0.4, 'm', 0.01),
  'trays.gapM': limit(0, 0.2, 'm', 0.005),
  'trays.meshLapM': limit(0, 0.1, 'm', 0.005),
  'trays.meshWireM': limit(0.0003, 0.006, 'm', 0.0001),
  'trays.meshPitchM': limit(0.003, 0.06, 'm', 0.001),
  'trays.battens': limit(0, 6, '1', 1),
  'trays.kerfM': limit(0, 0.01, 'm', 0.001),
  'trays.keepM': limit(0, 2, 'm', 0.05),
  'mixes.part': limit(0, 12, '1', 0.5),
  'mixes.dryFactor': limit(1, 2, '1', 0.01),
  'waste.units': limit(0, 0.5, '1', 0.01),
  'waste.concrete': share,
  'waste.mortar': share,
  'waste.fill': share,
  'waste.timber': share,
  'waste.mesh': share,
  'place.windDeg': limit(0, 359.99, 'deg', 22.5),
  'place.distanceM': limit(0, 500, 'm', 1),
  'place.declinationDeg': limit(-30, 30, 'deg', 0.5),
  'place.shelterHeadroomM': limit(1.8, 4, 'm', 0.1),
  'place.shelterOverhangM': limit(0.3, 2, 'm', 0.1),
  'offer.lotSize': limit(1e-4, 1e6, '1', 1),
  'offer.leastLots': limit(1, 1e6, '1', 1),
  'firing.cookHours': limit(0.25, 12, 'h', 0.25),
  'firing.dryHours': limit(0, 72, 'h', 0.5),
  'firing.cookDegC': limit(60, 160, 'degC', 5),
  'firing.dryDegC': limit(30, 100, 'degC', 5),
  'firing.airDegC': limit(0, 50, 'degC', 1),
  'firing.airHumidity': limit(0.05, 1, '1', 0.05),
  'firing.woodMoisture': limit(0.05, 0.6, '1', 0.01),
  'firingLog.massKg': limit(0, 20000, 'kg', 1),
  'firingLog.hours': limit(0, 120, 'h', 0.5),
  'build.masons': limit(0, 10, '1', 1),
  'build.labourers': limit(0, 30, '1', 1),
  'build.carpenters': limit(0, 10, '1', 1),
  'build.hoursPerDay': limit(1, 12, 'h', 0.5),
  'build.rainShare': limit(0, 0.8, '1', 0.05),
  'run.firingDaysPerYear': limit(1, 365, '1', 5),
  'run.kilnLifeYears': limit(0.5, 40, '1', 0.5),
  'run.trayLifeYears': limit(0.25, 20, '1', 0.25),
  'money.contingency': limit(0, 0.5, '1', 0.01),
} as const satisfies Record<string, Limit>

export type LimitedField = keyof typeof LIMITS
