import type { LengthJob } from '../../../src/core/cutting/length-job.ts'

/** A fixed stream of numbers from 0 to 1 for each seed (mulberry32), so that a failing job can be had again. */
function numbers(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), state | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

const MARKET_M = [2.4, 2.7, 3, 3.6, 3.66, 3.9, 4.2, 4.27, 4.8, 5.1, 5.4, 6]

/** One section's timber for the trays of 1–8 chambers: 2–4 piece lengths, 1–4 stock lengths at prices of their own, a saw. */
export function trayJob(seed: number, size: { readonly trays?: number; readonly stocks?: number } = {}): LengthJob {
  const next = numbers(seed)
  const whole = (least: number, most: number): number => least + Math.floor(next() * (most - least + 1))
  const trays = size.trays ?? whole(1, 8) * whole(1, 15)
  const pieces = Array.from({ length: whole(2, 4) }, () => ({
    lengthM: whole(300, 1300) / 1000,
    count: trays * whole(1, 3),
  }))
  const ratePerM = whole(200, 900)
  const market = MARKET_M.map((lengthM) => ({ lengthM, at: next() })).sort((a, b) => a.at - b.at)
  const stock = market.slice(0, size.stocks ?? whole(1, 4)).map(({ lengthM }, k) => ({
    key: `s${String(k)}`,
    lengthM,
    priceMinor: Math.round((lengthM * ratePerM * (0.9 + 0.2 * next())) / 50) * 50,
  }))
  return { pieces, stock, kerfM: whole(0, 5) / 1000, keepM: 0.3 }
}
