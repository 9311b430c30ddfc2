import { cited, counted, derive, sumOf, typed, type Derived } from '../basics/derived.ts'
import type { TrayFrame } from '../fish/tray-frame.ts'
import type { KilnGeometry } from '../geometry/kiln.ts'
import { wallFaces } from '../heat/wall-faces.ts'
import type { Layout } from '../layout/contract.ts'
import type { Plan } from '../plan/schema.ts'
import { soilOf } from '../plan/catalogue.ts'
import { LABOUR_DATA, rate, waitDays } from './labour-data.ts'
import { wallWork, type Hours } from './wall-work.ts'

export type TaskKind =
  | 'set-out'
  | 'dig'
  | 'cast-lintels'
  | 'lintel-wait'
  | 'footing'
  | 'footing-wait'
  | 'walls-below'
  | 'backfill'
  | 'walls'
  | 'lift-wait'
  | 'heads'
  | 'fill'
  | 'slabs'
  | 'faces'
  | 'curing'
  | 'trays'
  | 'first-fires'

export type Caution =
  | 'look-up'
  | 'trench'
  | 'cement'
  | 'heavy'
  | 'dust'
  | 'lintel'
  | 'steady'
  | 'saw'
  | 'smoke'
  | 'burns'
  | 'fire-distance'

/** One thing to do or to wait for, with what it waits on. */
export interface Task {
  readonly id: string
  readonly kind: TaskKind
  /** Levels between which walls rise, m over the ground. */
  readonly fromM?: number
  readonly toM?: number
  readonly hours: Hours
  /** Days that pass by themselves; work and waiting are never in one task. */
  readonly wait?: Derived<'day'>
  readonly outdoors: boolean
  readonly needs: readonly string[]
  readonly cautions: readonly Caution[]
}

type Kiln = { readonly plan: Plan; readonly tray: TrayFrame; readonly geometry: KilnGeometry; readonly layout: Layout }

/** Clay goes up in lifts and dries; what is laid in cement cures. */
const isClay = ({ walls, mixes }: Plan) => walls.unit.family === 'clay-brick' || mixes.mortar.cement === 0

/** Everything to do, in the order in which a crew would take it up, from the kiln's own amounts. Ids in `needs` always stand earlier. */
export function buildTasks(plan: Plan, tray: TrayFrame, geometry: KilnGeometry, layout: Layout): Task[] {
  const kiln = { plan, tray, geometry, layout }
  const walls = risingWalls(kiln)
  const top = walls.at(-1)?.id ?? 'backfill'
  const filling = fillTask(kiln, top)
  const slabs = slabTask(kiln, top)
  const faces = faceTask(kiln, filling[0]?.id ?? top)
  const last = [top, ...[...filling, ...slabs, ...faces].map((task) => task.id)]
  return [
    ...groundTasks(kiln),
    ...walls,
    ...filling,
    ...slabs,
    ...faces,
    waiting('curing', 'curing', isClay(plan) ? waitDays('clayDrying') : waitDays('curing'), last),
    trayTask(kiln, top),
    {
      ...waiting('first-fires', 'first-fires', waitDays('firstFires'), ['curing', 'trays']),
      cautions: ['smoke', 'burns', 'fire-distance'],
    },
  ]
}

const task = (
  id: string,
  kind: TaskKind,
  hours: Hours,
  needs: readonly string[],
  cautions: readonly Caution[],
): Task => ({
  id,
  kind,
  hours,
  outdoors: true,
  needs,
  cautions,
})

const waiting = (id: string, kind: TaskKind, wait: Derived<'day'>, needs: readonly string[]): Task => ({
  ...task(id, kind, {}, needs, []),
  wait,
})

function groundTasks({ plan, geometry, layout }: Kiln): Task[] {
  const { earthworks, footing } = geometry
  const once = counted('one', 'piece', 1)
  const setOut = (id: string) => derive(id, 'h', 'n · k', { n: once, k: rate('set-out', 'h/piece') }, (v) => v.n * v.k)
  const soil = soilOf(plan.ground.soil)
  const digging = cited('rate.dig', 'h/m3', soil.digHoursPerM3, soil.digSource)
  const dig = derive('work.dig', 'h', 'V · k', { V: earthworks.dig, k: digging }, (v) => v.V * v.k)
  const back = derive(
    'work.backfill',
    'h',
    'V · k',
    { V: earthworks.backfill, k: rate('backfill-labourer', 'h/m3') },
    (v) => v.V * v.k,
  )
  const lintels = layout.lintels.filter((one) => one.kind === 'lintel').length
  const below = wallWork(plan, geometry, layout, -geometry.levels.belowM, 0)
  const hasBelow = geometry.levels.belowM > 0.001
  return [
    task('set-out', 'set-out', { mason: setOut('work.set-out'), labourer: setOut('work.set-out') }, [], ['look-up']),
    ...(lintels > 0
      ? [
          task('cast-lintels', 'cast-lintels', { mason: headHours(lintels) }, ['set-out'], ['cement', 'lintel']),
          waiting('lintel-wait', 'lintel-wait', waitDays('curing'), ['cast-lintels']),
        ]
      : []),
    task('dig', 'dig', { labourer: dig }, ['set-out'], ['trench']),
    task('footing', 'footing', concreteWork('work.footing', footing.concrete), ['dig'], ['cement']),
    waiting('footing-wait', 'footing-wait', waitDays('footing'), ['footing']),
    ...(hasBelow ? [task('walls-below', 'walls-below', below, ['footing-wait'], ['cement', 'heavy', 'dust'])] : []),
    task('backfill', 'backfill', { labourer: back }, [hasBelow ? 'walls-below' : 'footing-wait'], ['trench']),
  ]
}

const headHours = (count: number): Derived<'h'> =>
  derive(
    'work.heads',
    'h',
    'n · k',
    { n: counted('work.heads-count', 'piece', count), k: rate('head-mason', 'h/piece') },
    (v) => v.n * v.k,
  )

const concreteWork = (id: string, V: Derived<'m3'>): Hours => ({
  mason: derive(`${id}-mason`, 'h', 'V · k', { V, k: rate('concrete-mason', 'h/m3') }, (v) => v.V * v.k),
  labourer: derive(`${id}-labourer`, 'h', 'V · k', { V, k: rate('concrete-labourer', 'h/m3') }, (v) => v.V * v.k),
})

/** Walls above ground, cut at the head of the openings and, in clay, at every lift; a lift dries before the next. */
function risingWalls({ plan, geometry, layout }: Kiln): Task[] {
  const { headM, aboveM } = geometry.levels
  const clay = isClay(plan)
  const liftM = LABOUR_DATA.waits.clayLiftM
  const lifts: number[] = []
  for (let lift = 1; clay && lift * liftM < aboveM - 1e-6; lift++) lifts.push(lift * liftM)
  const stops = [...new Set([...lifts, Math.min(headM, aboveM), aboveM])].toSorted((a, b) => a - b)
  const tasks: Task[] = []
  let before = 'backfill'
  let fromM = 0
  let rises = 0
  for (const toM of stops) {
    if (toM - fromM > 1e-6) {
      rises++
      const id = `walls-${String(rises)}`
      const hours = wallWork(plan, geometry, layout, fromM, toM)
      tasks.push({ ...task(id, 'walls', hours, [before], ['cement', 'heavy', 'dust', 'steady']), fromM, toM })
      before = id
      fromM = toM
    }
    if (toM === Math.min(headM, aboveM)) {
      const cast = layout.lintels.some((one) => one.kind === 'lintel') ? ['lintel-wait'] : []
      tasks.push(
        task('heads', 'heads', { mason: headHours(plan.chambers.count) }, [before, ...cast], ['lintel', 'heavy']),
      )
      before = 'heads'
    }
    if (lifts.includes(toM)) {
      const id = `lift-wait-${String(rises)}`
      tasks.push(waiting(id, 'lift-wait', waitDays('clayLift'), [before]))
      before = id
    }
  }
  return tasks
}

function fillTask({ plan, layout }: Kiln, after: string): Task[] {
  if (plan.walls.fill === 'none' || layout.fillableVoidM3 <= 0) return []
  const V = counted('work.fill-volume', 'm3', layout.fillableVoidM3)
  const hours = derive('work.fill', 'h', 'V · k', { V, k: rate('fill-labourer', 'h/m3') }, (v) => v.V * v.k)
  return [task('fill', 'fill', { labourer: hours }, [after], ['heavy'])]
}

function slabTask({ geometry }: Kiln, after: string): Task[] {
  const { hearthSlab, apronSlab } = geometry.earthworks
  const volume = sumOf('work.slab-volume', 'm3', [hearthSlab, apronSlab])
  return volume.value > 0 ? [task('slabs', 'slabs', concreteWork('work.slabs', volume), [after], ['cement'])] : []
}

/** Clay lining on the faces of the fire, render on the outer faces. */
function faceTask({ plan, geometry }: Kiln, after: string): Task[] {
  const areas: Derived<'m2'>[] = []
  const faces = wallFaces(plan)
  if (plan.walls.liningM > 0)
    areas.push(derive('work.lining', 'm2', 'A + B', { A: faces.outer, B: faces.shared }, (v) => v.A + v.B))
  if (plan.walls.renderM > 0)
    areas.push(
      derive(
        'work.render',
        'm2',
        '2 · (L + D) · z',
        { L: geometry.outsideLength, D: geometry.outsideDepth, z: geometry.wallAbove },
        (v) => 2 * (v.L + v.D) * v.z,
      ),
    )
  if (areas.length === 0) return []
  const area = sumOf('work.faces-area', 'm2', areas)
  const hours = derive('work.faces', 'h', 'A · k', { A: area, k: rate('face-mason', 'h/m2') }, (v) => v.A * v.k)
  return [task('faces', 'faces', { mason: hours }, [after], ['cement'])]
}

/** Trays are made to the walls as they came out, under a roof. */
function trayTask({ plan, tray }: Kiln, after: string): Task {
  const n = typed('chamber-count', 'piece', plan.chambers.count, 'chambers.count')
  const hours = derive(
    'work.trays',
    'h',
    'N · k + n · c',
    { N: tray.count, k: rate('tray-carpenter', 'h/piece'), n, c: rate('cover-carpenter', 'h/piece') },
    (v) => v.N * v.k + v.n * v.c,
  )
  return { ...task('trays', 'trays', { carpenter: hours }, [after], ['saw']), outdoors: false }
}
