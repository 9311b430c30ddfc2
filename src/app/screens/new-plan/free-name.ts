/** A name that no other plan on this phone has: New kiln, New kiln 2, New kiln 3. */
export function freeName(stem: string, taken: readonly string[]): string {
  if (!taken.includes(stem)) return stem
  let number = 2
  while (taken.includes(`${stem} ${String(number)}`)) number++
  return `${stem} ${String(number)}`
}
