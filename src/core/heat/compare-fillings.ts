import { cited, derive, typed, type Derived } from '../basics/derived.ts'
import { FISH_DATA } from '../fish/fish-data.ts'
import type { Plan } from '../plan/schema.ts'
import { wallHeat, type FaceHeat } from './firing-heat.ts'
import { heatOfWood } from './fuel.ts'
import { HEAT_DATA } from './heat-data.ts'
import { modelled } from './modelled.ts'
import { transmittance } from './slab.ts'
import { wallFaces } from './wall-faces.ts'
import { outerWall, separatePaths, type Filling } from './wall-section.ts'

/** What one filling of the hollows does, all walls of the kiln together, in one firing. */
export interface FillingWorth {
  readonly filling: Filling
  readonly current: boolean
  /** Steady transmittance of the outer wall between the two bounds of the method: separate paths and isothermal planes. */
  readonly transmittance: { readonly low: Derived<'W/m2K'>; readonly high: Derived<'W/m2K'> }
  readonly cold: KilnHeat
  readonly repeated: KilnHeat
}

/** Heat of one firing and what it costs in wood; `saved` is against empty hollows and below zero where filling costs wood. */
export interface KilnHeat {
  readonly drawn: Derived<'J'>
  readonly lost: Derived<'J'>
  readonly stored: Derived<'J'>
  /** Given back into the chamber after the fire. */
  readonly returned: Derived<'J'>
  readonly peakOutside: Derived<'degC'>
  readonly peakOutsideHours: number
  readonly wood: Derived<'kg'>
  readonly saved: Derived<'kg'>
}

/** Hollow units may stand empty or filled, and are compared with the same wall without hollows; solid units have nothing to compare. */
const fillingsFor = ({ walls }: Plan): readonly Filling[] =>
  walls.unit.cells.length > 0 ? ['none', 'sand', 'clay', 'solid'] : ['solid']

/**
 * Empty against filled against solid, from cold and firing after firing, with gas at the hotter end beside the flame. A filled wall stores more, so a single cold
 * firing may cost wood; whether it pays over repeated firings is for the numbers to say.
 */
export function compareFillings(plan: Plan): FillingWorth[] {
  const fillings = fillingsFor(plan)
  const current = plan.walls.unit.cells.length > 0 ? plan.walls.fill : 'solid'
  const base: { cold?: Derived<'kg'>; repeated?: Derived<'kg'> } = {}
  return fillings.map((filling) => {
    const heat = wallHeat(plan, filling, HEAT_DATA.fireZone.hotterHighK)
    const whole = (when: 'cold' | 'repeated'): KilnHeat => {
      const kiln = wholeKiln(plan, heat.outer[when], heat.shared[when])
      base[when] ??= kiln.wood
      const empty = base[when]
      const saved = derive('heat.wood-saved', 'kg', 'w − x', { w: empty, x: kiln.wood }, (v) => v.w - v.x)
      return { ...kiln, saved }
    }
    return {
      filling,
      current: filling === current,
      transmittance: bounds(plan, filling),
      cold: whole('cold'),
      repeated: whole('repeated'),
    }
  })
}

function bounds(plan: Plan, filling: Filling): FillingWorth['transmittance'] {
  const { inside } = HEAT_DATA.films
  const planes = transmittance(outerWall(plan, filling), inside)
  const paths = separatePaths(plan, filling).reduce(
    (sum, path) => sum + path.share * transmittance(path.slab, inside),
    0,
  )
  const from = { t: typed('wall-thickness', 'm', plan.walls.unit.widthM, 'walls.unit.widthM') }
  return {
    low: modelled('heat.transmittance-paths', 'W/m2K', paths, from),
    high: modelled('heat.transmittance-planes', 'W/m2K', planes, from),
  }
}

function wholeKiln(plan: Plan, outer: FaceHeat, shared: FaceHeat): Omit<KilnHeat, 'saved'> {
  const faces = wallFaces(plan)
  const from = { h: typed('firing.dry-hours', 'h', plan.firing.dryHours, 'firing.dryHours') }
  const sum = (id: string, outerJm2: number, sharedJm2: number) =>
    derive(
      id,
      'J',
      'A · q + B · p',
      {
        A: faces.outer,
        q: modelled('heat.outer-face-heat', 'J/m2', outerJm2, from),
        B: faces.shared,
        p: modelled('heat.shared-face-heat', 'J/m2', sharedJm2, from),
      },
      (v) => v.A * v.q + v.B * v.p,
    )
  const drawn = sum('heat.walls', outer.drawnJm2, shared.drawnJm2)
  const ncv = heatOfWood(typed('wood.moisture', '1', plan.firing.woodMoisture, 'firing.woodMoisture'))
  const burnt = cited('wood.burnt', '1', FISH_DATA.wood.burntLow, FISH_DATA.wood.burntSource)
  return {
    drawn,
    lost: sum('heat.walls-lost', outer.lostJm2, shared.lostJm2),
    stored: sum('heat.walls-stored', outer.storedJm2, shared.storedJm2),
    returned: sum('heat.walls-returned', outer.returnedJm2, shared.returnedJm2),
    peakOutside: modelled('heat.peak-outside', 'degC', outer.peakOutsideDegC, from),
    peakOutsideHours: outer.peakOutsideHours,
    wood: derive('heat.walls-wood', 'kg', 'Q / (H · e)', { Q: drawn, H: ncv, e: burnt }, (v) => v.Q / (v.H * v.e)),
  }
}
