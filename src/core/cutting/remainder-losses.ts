import { type Columns, takeColumn } from './columns.ts'
import { LeastFirst } from './heap.ts'
import { type LinearBound, lossOf } from './linear-bound.ts'
import { type RemainderClasses } from './remainder-classes.ts'
import { at, type Vector } from './vector.ts'

/** What a plan may take beside the basis columns of its linear bound, and what each loses against the bound. */
export interface LossySteps {
  readonly count: number
  /** The first so many are surpluses of a row; after them columns by rising loss. */
  readonly surpluses: number
  readonly id: Vector
  readonly loss: Vector
  readonly kind: Vector
}

/**
 * Surpluses and columns outside the basis that lose no more than `most`, in the money of the bound; a barred column
 * is left out.
 */
export function lossySteps(
  columns: Columns,
  bound: LinearBound,
  most: number,
  classes: RemainderClasses,
  barred?: Vector,
): LossySteps {
  const basic = new Set(bound.basis)
  const surpluses: { id: number; loss: number }[] = []
  for (let i = 0; i < columns.rows; i++) {
    if (basic.has(-1 - i) || at(bound.worth, i) > most) continue
    surpluses.push({ id: -1 - i, loss: at(bound.worth, i) })
  }
  const taking: { id: number; loss: number }[] = []
  for (let p = 0; p < columns.count; p++) {
    if (basic.has(p) || (barred !== undefined && at(barred, p) === 1)) continue
    const loss = lossOf(columns, p, bound.worth)
    if (loss <= most) taking.push({ id: p, loss: loss < 0 ? 0 : loss })
  }
  taking.sort((a, b) => a.loss - b.loss || a.id - b.id)
  const all = [...surpluses, ...taking]
  const spent = new Float64Array(columns.rows)
  const kind = all.map(({ id }) => {
    spent.fill(0)
    if (id < 0) spent[-1 - id] = -1
    else takeColumn(columns, id, -1, spent)
    return classes.classOf(spent)
  })
  return {
    count: all.length,
    surpluses: surpluses.length,
    id: Float64Array.from(all, (s) => s.id),
    loss: Float64Array.from(all, (s) => s.loss),
    kind: Float64Array.from(kind),
  }
}

/** The least loss with which each remainder class can be covered, found as far as it is asked for. */
export class RemainderLosses {
  steps = 0
  private readonly classes: RemainderClasses
  private readonly kind: number[] = []
  private readonly loss: number[] = []
  private readonly most: number
  private readonly known: Vector
  private readonly done: Vector
  private readonly queue = new LeastFirst()

  constructor(classes: RemainderClasses, steps: LossySteps, most: number) {
    this.classes = classes
    this.most = most
    const order = Array.from({ length: steps.count }, (_, s) => s)
    order.sort((a, b) => at(steps.loss, a) - at(steps.loss, b) || a - b)
    const seen = new Float64Array(classes.count)
    for (const s of order) {
      const k = at(steps.kind, s)
      if (k === 0 || at(seen, k) === 1) continue
      seen[k] = 1
      this.kind.push(k)
      this.loss.push(at(steps.loss, s))
    }
    this.known = new Float64Array(classes.count).fill(Infinity)
    this.done = new Float64Array(classes.count)
    this.known[0] = 0
    this.queue.push(0, 0)
  }

  /** A loss that covering this class cannot beat, from what is known so far. */
  least(id: number): number {
    return at(this.done, id) === 1 ? at(this.known, id) : this.queue.least
  }

  /** The same, looked into until the class is settled or surely loses more than `enough`. */
  settle(id: number, enough: number): number {
    while (at(this.done, id) === 0 && this.queue.least <= enough) this.advance()
    return this.least(id)
  }

  private advance(): void {
    const from = this.queue.pop()
    if (at(this.done, from) === 1) return
    this.done[from] = 1
    const d = at(this.known, from)
    for (let s = 0; s < this.kind.length; s++) {
      const next = d + (this.loss[s] as number)
      if (next > this.most) break
      this.steps++
      const to = this.classes.sum(from, this.kind[s] as number)
      if (next >= at(this.known, to)) continue
      this.known[to] = next
      this.queue.push(next, to)
    }
  }
}
