import { at } from './vector.ts'

/** A queue that gives its least-valued entry first, and of equal values the one that came last: deterministic. */
export class LeastFirst {
  private value = new Float64Array(256)
  private entry = new Float64Array(256)
  private size = 0

  get length(): number {
    return this.size
  }

  /** The least value in the queue; Infinity when it is empty. */
  get least(): number {
    return this.size === 0 ? Infinity : at(this.value, 0)
  }

  push(value: number, entry: number): void {
    if (this.size === this.value.length) {
      const values = new Float64Array(this.size * 2)
      values.set(this.value)
      this.value = values
      const entries = new Float64Array(this.size * 2)
      entries.set(this.entry)
      this.entry = entries
    }
    let i = this.size++
    while (i > 0) {
      const up = (i - 1) >> 1
      const v = at(this.value, up)
      if (v < value || (v === value && at(this.entry, up) > entry)) break
      this.value[i] = v
      this.entry[i] = at(this.entry, up)
      i = up
    }
    this.value[i] = value
    this.entry[i] = entry
  }

  /** Takes the first entry out; the queue must not be empty. */
  pop(): number {
    const first = at(this.entry, 0)
    const n = --this.size
    const value = at(this.value, n)
    const entry = at(this.entry, n)
    let i = 0
    for (;;) {
      let down = 2 * i + 1
      if (down >= n) break
      const other = down + 1
      if (other < n && this.before(other, down)) down = other
      const v = at(this.value, down)
      const e = at(this.entry, down)
      if (value < v || (value === v && entry > e)) break
      this.value[i] = v
      this.entry[i] = e
      i = down
    }
    this.value[i] = value
    this.entry[i] = entry
    return first
  }

  private before(a: number, b: number): boolean {
    const x = at(this.value, a)
    const y = at(this.value, b)
    return x < y || (x === y && at(this.entry, a) > at(this.entry, b))
  }
}
