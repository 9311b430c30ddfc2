import * as fc from 'fast-check'

type Mutate<T> = (good: T) => T

const spot = fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true })
const at = (share: number, length: number): number => Math.floor(share * length)
const together = <T>(one: fc.Arbitrary<Mutate<T>>): fc.Arbitrary<Mutate<T>> =>
  fc
    .array(one, { minLength: 1, maxLength: 5 })
    .map((all) => (good: T) => all.reduce((now, mutate) => mutate(now), good))

const joined = (...parts: readonly Uint8Array[]): Uint8Array => Uint8Array.from(parts.flatMap((part) => [...part]))
/** Numbers of the variable length that these formats count with, set to something absurd. */
const HUGE = Uint8Array.of(255, 255, 255, 255, 127)

/** Bytes changed, put in, taken out, repeated, cut short, or a count made huge. */
export const mutatedBytes: fc.Arbitrary<Mutate<Uint8Array>> = together(
  fc.oneof(
    fc.tuple(spot, fc.nat(255)).map(([place, value]) => (good: Uint8Array) => {
      const index = at(place, good.length)
      return good.map((byte, here) => (here === index ? value : byte))
    }),
    fc.tuple(spot, fc.uint8Array({ maxLength: 6 })).map(([place, put]) => (good: Uint8Array) => {
      const index = at(place, good.length)
      return joined(good.subarray(0, index), put, good.subarray(index))
    }),
    fc.tuple(spot, fc.nat(40)).map(([place, count]) => (good: Uint8Array) => {
      const index = at(place, good.length)
      return joined(good.subarray(0, index), good.subarray(index + count))
    }),
    fc.tuple(spot, spot).map(([from, to]) => (good: Uint8Array) => {
      const index = at(from, good.length)
      const there = at(to, good.length)
      return joined(good.subarray(0, there), good.subarray(index, index + 120), good.subarray(there))
    }),
    spot.map((place) => (good: Uint8Array) => good.slice(0, at(place, good.length))),
    spot.map((place) => (good: Uint8Array) => {
      const index = at(place, good.length)
      return joined(good.subarray(0, index), HUGE, good.subarray(index + 1))
    }),
  ),
)

/** The same for text, with what parsers, pages and tables stumble over among the letters put in. */
const letters = fc.oneof(
  fc.string({ maxLength: 4 }),
  fc.constantFrom(
    '__proto__',
    '"',
    '{',
    '[[[[',
    '\u0000',
    '<img src=x onerror=alert(1)>',
    '=1+1',
    '%',
    '1e999',
    'null',
  ),
)
export const mutatedText: fc.Arbitrary<Mutate<string>> = together(
  fc.oneof(
    fc.tuple(spot, letters).map(([place, put]) => (good: string) => {
      const index = at(place, good.length)
      return good.slice(0, index) + put + good.slice(index + put.length)
    }),
    fc.tuple(spot, letters).map(([place, put]) => (good: string) => {
      const index = at(place, good.length)
      return good.slice(0, index) + put + good.slice(index)
    }),
    fc.tuple(spot, fc.nat(80)).map(([place, count]) => (good: string) => {
      const index = at(place, good.length)
      return good.slice(0, index) + good.slice(index + count)
    }),
    fc.tuple(spot, spot).map(([from, to]) => (good: string) => {
      const index = at(from, good.length)
      const there = at(to, good.length)
      return good.slice(0, there) + good.slice(index, index + 200) + good.slice(there)
    }),
  ),
)
