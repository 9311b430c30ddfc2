type Raw = Record<string, unknown>

const isObject = (raw: unknown): raw is Raw => typeof raw === 'object' && raw !== null && !Array.isArray(raw)

/** The plan with a value at a dotted path where it has none yet; a plan that is damaged on the way there is left as it is. */
function withMissing(raw: Raw, [first = '', ...rest]: readonly string[], value: unknown): Raw {
  if (rest.length === 0) return Object.hasOwn(raw, first) ? raw : { ...raw, [first]: value }
  const inner = raw[first]
  return isObject(inner) ? { ...raw, [first]: withMissing(inner, rest, value) } : raw
}

/** What version 2 asks beyond version 1, and what a plan of version 1 answers. */
const NEW_IN_2: Readonly<Record<string, unknown>> = {
  'ground.heights': { frontLeftM: null, rightM: null, rightApartM: null, backM: null, backApartM: null },
  'ground.tests': { ground: null, handful: null, thumb: null, picketM: null },
  'trays.owned': {},
}

/** Entry n lifts a plan of version n + 1 to n + 2. Append only: a phone in a drawer may hold any of them. */
export const MIGRATIONS: readonly ((old: Raw) => Raw)[] = [
  (old) =>
    Object.entries(NEW_IN_2).reduce<Raw>((plan, [path, value]) => withMissing(plan, path.split('.'), value), {
      ...old,
      version: 2,
    }),
]
