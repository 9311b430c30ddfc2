import { wholeUp } from '../basics/count.ts'
import { byText } from '../basics/order.ts'
import { cited, derive, typed, type Derived } from '../basics/derived.ts'
import type { TrayFrame } from '../fish/tray-frame.ts'
import type { Plan } from '../plan/schema.ts'
import { itemOf } from './items.ts'
import { need, type Need } from './need.ts'
import { lengthsNeed, timberWaste, type PieceGroup } from './timber.ts'

/** Wire staples of about 20 mm in a kilogram. */
const STAPLES_PER_KG = cited('staples-per-kg', 'piece/kg', 1000, 'memory')
const NO_WASTE = cited('waste.none', '1', 0, 'common-practice')
/** Fixings that bend, split the wood or fall in the grass. */
const FIXING_WASTE = cited('waste.fixings', '1', 0.1, 'common-practice')

/** Trays and covers: timber by the piece, mesh and covers by area, nails and staples by mass. Net; buying turns them into boards, rolls and sheets. */
export function trayNeeds(plan: Plan, tray: TrayFrame): Need[] {
  const waste = timberWaste(plan.waste.timber)
  const covers = typed('cover.count', 'piece', plan.chambers.count, 'chambers.count')
  const rails = tray.pieces.map((piece): PieceGroup => ({
    length: piece.length,
    count: derive(
      'tray.pieces',
      'piece',
      'N · k',
      { N: tray.count, k: perTray(piece.kind, piece.perTray) },
      (of) => of.N * of.k,
      {
        args: { piece: `piece.${piece.kind}` },
      },
    ),
    label: `piece.${piece.kind}`,
  }))
  const nails = derive('need.nails', 'kg', 'N · k', { N: tray.count, k: tray.fixings.nailMass }, (of) => of.N * of.k)
  const staples = derive(
    'need.staples',
    'kg',
    'N · q / k',
    { N: tray.count, q: tray.fixings.staples, k: STAPLES_PER_KG },
    (of) => (of.N * of.q) / of.k,
  )
  return [
    lengthsNeed('rail', 'trays', 'trays', [...rails, ...coverFrame(plan, tray, covers)], waste),
    meshNeed(plan, tray),
    ...coverNeeds(plan, tray, covers),
    need('nails', 'trays', 'trays', nails, FIXING_WASTE),
    need('staples', 'trays', 'trays', staples, FIXING_WASTE),
  ]
}

const perTray = (kind: string, count: number): Derived<'1'> =>
  kind === 'batten'
    ? typed('tray.battens', '1', count, 'trays.battens')
    : cited('tray.rails-each', '1', count, 'common-practice')

/** Mesh by area, net of what the roll's width leaves over; waste is whole spare squares, since a spare strip mends no torn one. */
function meshNeed(plan: Plan, tray: TrayFrame): Need {
  const waste = typed('waste.mesh', '1', plan.waste.mesh, 'waste.mesh')
  const area = derive('need.mesh', 'm2', 'N · s^2', { N: tray.count, s: tray.mesh }, (of) => of.N * of.s ** 2)
  return {
    ...need('mesh', 'trays', 'trays', area, waste),
    pieces: [
      {
        lengthM: tray.mesh.value,
        widthM: tray.mesh.value,
        count: wholeUp(tray.count.value * (1 + waste.value)),
        label: 'piece.mesh',
      },
    ],
  }
}

/** The cover is as large as the tray's frame, one for each stack: a sheet, a sheet on a frame of rails, or boards on two ledgers. */
function coverNeeds(plan: Plan, tray: TrayFrame, covers: Derived<'piece'>): Need[] {
  const kind = plan.trays.cover
  switch (kind) {
    case 'sheet':
    case 'framed': {
      const area = derive('need.cover', 'm2', 'N · f^2', { N: covers, f: tray.side }, (of) => of.N * of.f ** 2)
      const side = tray.side.value
      return [
        {
          ...need('cover-sheet', 'trays', 'covers', area, NO_WASTE),
          pieces: [{ lengthM: side, widthM: side, count: covers.value, label: 'piece.cover' }],
        },
      ]
    }
    case 'board': {
      const width = boardWidth(plan)
      const boards = derive(
        'cover.boards',
        'piece',
        'N · ceil(f / b)',
        { N: covers, f: tray.side, b: width },
        (of) => of.N * wholeUp(of.f / of.b),
      )
      return [
        lengthsNeed(
          'cover-board',
          'trays',
          'covers',
          [{ length: tray.side, count: boards, label: 'piece.cover-board' }],
          timberWaste(plan.waste.timber),
        ),
      ]
    }
    default:
      return kind satisfies never
  }
}

/** Width of the boards on offer: of the chosen one, else of the first by id; the trade's usual one where none says. */
function boardWidth({ offers }: Plan): Derived<'m'> {
  const wide = Object.entries(offers)
    .filter(([, offer]) => offer.item === 'cover-board' && offer.widthM > 0)
    .toSorted(([a, one], [b, other]) => Number(other.chosen) - Number(one.chosen) || byText(a, b))
  const [first] = wide
  if (first === undefined)
    return cited('cover.board-width', 'm', itemOf('cover-board').widthM ?? 0.15, 'common-practice')
  return typed('cover.board-width', 'm', first[1].widthM, `offers.${first[0]}.widthM`)
}

/** Rails under the cover: four round a framed sheet, two ledgers across boards. */
function coverFrame(plan: Plan, tray: TrayFrame, covers: Derived<'piece'>): PieceGroup[] {
  const each = { sheet: 0, framed: 4, board: 2 }[plan.trays.cover]
  if (each === 0) return []
  const count = derive(
    'cover.rails',
    'piece',
    'N · k',
    { N: covers, k: cited('cover.rails-each', '1', each, 'common-practice') },
    (of) => of.N * of.k,
  )
  return [{ length: tray.side, count, label: 'piece.cover-rail' }]
}
