// The oldest browsers that the app supports (Chrome and WebView 109, Safari 15.4) lack two methods of ES2023 that the code uses.
// Imported first by the page and by its worker; a browser that has them keeps its own.

function give(name: 'toSorted' | 'toReversed', way: (this: unknown[], ...args: never[]) => unknown[]): void {
  if (name in Array.prototype) return
  // eslint-disable-next-line no-extend-native
  Object.defineProperty(Array.prototype, name, { value: way, writable: true, configurable: true })
}

give('toSorted', function (compare?: (a: unknown, b: unknown) => number) {
  return [...this].sort(compare)
})
give('toReversed', function () {
  return [...this].reverse()
})
