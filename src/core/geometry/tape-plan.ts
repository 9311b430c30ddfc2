import type { KilnGeometry } from './kiln.ts'
import type { Peg } from './tape-network.ts'

/** A length to tape between two pegs and what it should be. */
export interface TapeToTake {
  readonly from: string
  readonly to: string
  readonly planM: number
  readonly kind: 'side' | 'diagonal' | 'bay'
}

/** The four corner pegs, and for several chambers one in front (F1, F2 …) and one behind (K1, K2 …) at the middle of each dividing wall. */
export function tapePegs({ outside, walls }: Pick<KilnGeometry, 'outside' | 'walls'>): Peg[] {
  const middles = walls.filter((wall) => wall.id.startsWith('divider')).map((wall) => (wall.x0M + wall.x1M) / 2)
  return [
    { id: 'A', xM: 0, yM: 0 },
    { id: 'B', xM: outside.x1M, yM: 0 },
    { id: 'C', xM: outside.x1M, yM: outside.y1M },
    { id: 'D', xM: 0, yM: outside.y1M },
    ...middles.map((xM, index) => ({ id: `F${index + 1}`, xM, yM: 0 })),
    ...middles.map((xM, index) => ({ id: `K${index + 1}`, xM, yM: outside.y1M })),
  ]
}

/** Lengths worth taping: four sides and two diagonals fix and check the outline; along, across and both diagonals of each bay where there are several chambers. */
export function tapesToTake(geometry: Pick<KilnGeometry, 'outside' | 'walls'>): TapeToTake[] {
  const pegs = tapePegs(geometry)
  const tape = (from: string, to: string, kind: TapeToTake['kind']): TapeToTake => ({
    from,
    to,
    kind,
    planM: planLength(pegs, from, to),
  })
  const bays = (pegs.length - 4) / 2
  const front = ['A', ...Array.from({ length: bays }, (_, i) => `F${i + 1}`), 'B']
  const back = ['D', ...Array.from({ length: bays }, (_, i) => `K${i + 1}`), 'C']
  const pairs = (row: readonly string[]) => row.slice(1).map((to, i) => [row[i] ?? 'A', to] as const)
  const more =
    bays === 0
      ? []
      : [
          ...pairs(front).map(([from, to]) => tape(from, to, 'bay')),
          ...pairs(back).map(([from, to]) => tape(from, to, 'bay')),
          ...front.slice(1, -1).map((from, i) => tape(from, back[i + 1] ?? 'C', 'bay')),
          ...pairs(front).flatMap(([near, next], i) => [
            tape(near, back[i + 1] ?? 'C', 'bay'),
            tape(next, back[i] ?? 'D', 'bay'),
          ]),
        ]
  return [
    tape('A', 'B', 'side'),
    tape('B', 'C', 'side'),
    tape('C', 'D', 'side'),
    tape('D', 'A', 'side'),
    tape('A', 'C', 'diagonal'),
    tape('B', 'D', 'diagonal'),
    ...more,
  ]
}

/** Length between two pegs, m; 0 where one is unknown. */
export function planLength(pegs: readonly Peg[], from: string, to: string): number {
  const one = pegs.find((peg) => peg.id === from)
  const other = pegs.find((peg) => peg.id === to)
  return one === undefined || other === undefined ? 0 : Math.hypot(one.xM - other.xM, one.yM - other.yM)
}
