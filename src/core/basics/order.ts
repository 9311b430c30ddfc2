/** Order of two texts by their code units: the same on every phone, whatever its language. */
export const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)
