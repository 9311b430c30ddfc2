import { layOut } from '../../src/core/layout/lay-out.ts'
import { deepSearch } from '../../src/core/layout/searching-deep.ts'
import { request, UNIT_NAMES, UNITS } from '../core/layout/requests.ts'

/**
 * Prints, for every catalogue unit at five clear sides and six row lengths, units bought by the quick and the deep search, the
 * lower bound, the gap to it, and the median time of the quick one. Run after bundling: it is a report, not a test.
 */
const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0

const times = Number(process.argv[2] ?? 3)
console.log('unit            bond     side  n  units  bought  deep  bound   gap  short  deep  ms  µs/unit  deep ms')
for (const name of UNIT_NAMES)
  for (const [leaf, bond] of [
    ['single', 'stretcher'],
    ...(UNITS[name].heightM < 0.12 && UNITS[name].lengthM < 0.3 ? [['one-brick', 'english'] as const] : []),
  ] as const)
    for (const clearSideM of [0.6, 0.68, 0.7, 0.8, 1])
      for (const chambers of [1, 2, 3, 4, 8]) {
        const plan = request({ unit: UNITS[name], leaf, bond, clearSideM, chambers })
        const layout = layOut(plan)
        const took = Array.from({ length: times }, () => {
          const start = performance.now()
          layOut(plan)
          return performance.now() - start
        })
        const began = performance.now()
        const deep = [...deepSearch(plan)].at(-1)
        const deepMs = performance.now() - began
        const { bought, lowerBound, gap } = layout.counts
        const ms = median(took)
        console.log(
          `${name.padEnd(14)} ${bond.padEnd(9)} ${clearSideM.toFixed(2)} ${String(chambers).padStart(2)} ${String(layout.units.length).padStart(6)} ${String(bought).padStart(7)} ${String(deep?.bought).padStart(5)} ${String(lowerBound).padStart(6)} ${(gap * 100).toFixed(1).padStart(5)}% ${layout.trace.breaches.toFixed(0).padStart(4)} ${(deep?.breaches ?? 0).toFixed(0).padStart(4)} ${ms.toFixed(1).padStart(5)} ${((ms * 1000) / layout.units.length).toFixed(1).padStart(6)} ${deepMs.toFixed(0)}`,
        )
      }
