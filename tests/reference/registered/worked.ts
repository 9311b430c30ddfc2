/** How each registered figure is worked out by our own core, by its id; undefined where the core has no such number, which fails. */
export type Worked = Readonly<Record<string, () => number | undefined>>
