import type { ReactNode } from 'react'
import { Picks, Segments } from '../../parts/Picks.tsx'
import { useWords } from '../../words/use-words.tsx'
import { usePlan } from './plan-in-hand.ts'
import { valueAt } from './value-at.ts'

/** One of a few words of the plan (`ground.footing`), as segments. `names` begins the message keys of the choices. */
export function PlanChoice<K extends string>({
  at,
  name,
  names,
  keys,
}: {
  readonly at: string
  readonly name: string
  readonly names: string
  readonly keys: readonly K[]
}) {
  const { named } = useWords()
  const { plan, set } = usePlan()
  const chosen = keys.find((key) => key === valueAt(plan, at)) ?? keys[0]
  if (chosen === undefined) return null
  return (
    <Segments
      name={name}
      isNameShown
      choices={keys.map((key) => ({ key, label: named(`${names}.${key}`) }))}
      chosen={chosen}
      onChoose={(key) => set({ [at]: key })}
    />
  )
}

/** The same with a picture and a line of detail on each card. */
export function PlanPicks<K extends string>({
  at,
  name,
  names,
  keys,
  picture,
  detail,
}: {
  readonly at: string
  readonly name: string
  readonly names: string
  readonly keys: readonly K[]
  readonly picture?: (key: K) => ReactNode
  readonly detail?: (key: K) => string
}) {
  const { named } = useWords()
  const { plan, set } = usePlan()
  return (
    <Picks
      name={name}
      choices={keys.map((key) => ({
        key,
        title: named(`${names}.${key}`),
        ...(picture && { picture: picture(key) }),
        ...(detail && { detail: detail(key) }),
      }))}
      chosen={keys.find((key) => key === valueAt(plan, at)) ?? null}
      onChoose={(key) => set({ [at]: key })}
    />
  )
}
