/** Which mutant is awake, and which were met. */
interface Awake {
  id: number
  met: Set<number>
  untilMs: number
  /** Grows with every run of a test. */
  turn: number
  steps: number
}

const shared = globalThis as { kilnwrightMutants?: Awake }

/** One for the switched files and the runner, which load this file apart from each other in one process. */
export const awake: Awake = (shared.kilnwrightMutants ??= {
  id: 0,
  met: new Set(),
  untilMs: Infinity,
  turn: 0,
  steps: 0,
})

/** A test under a mutant has taken far longer than without: an endless loop, which counts as noticed. */
export class TooLong extends Error {
  override name = 'TooLong'
}

/** Time this process has had, ms: it does not run on while others have the machine. */
export function ownMs(): number {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1000
}

const tick = (): void => {
  awake.steps = (awake.steps + 1) & 0xfff
  if (awake.steps === 0 && ownMs() > awake.untilMs) throw new TooLong('far longer than without the mutant')
}

/** A memory of the core that forgets when another mutant is awake, or none: what one gave must not answer for the other. */
class Forgetful<K extends WeakKey, V> extends WeakMap<K, V> {
  readonly #since = new WeakMap<K, number>()
  override set(key: K, value: V): this {
    this.#since.set(key, awake.turn)
    return super.set(key, value)
  }
  override get(key: K): V | undefined {
    return this.has(key) ? super.get(key) : undefined
  }
  override has(key: K): boolean {
    return this.#since.get(key) === awake.turn
  }
}

Object.assign(globalThis, {
  __WeakMap: Forgetful,
  __tick: tick,
  __mutant: (id: number): boolean => {
    tick()
    awake.met.add(id)
    return id === awake.id
  },
})
