import { derive, typed, type Derived } from '../basics/derived.ts'
import type { Plan } from '../plan/schema.ts'

/** Dressing takes its share before loading: dressed = fresh · (1 − loss). */
export function dressedFish({ catch: fish }: Plan, fresh: Derived<'kg'>): Derived<'kg'> {
  const loss = typed('catch.dressing-loss', '1', fish.dressingLoss, 'catch.dressingLoss')
  return derive('catch.dressed', 'kg', 'W · (1 − x)', { W: fresh, x: loss }, (v) => v.W * (1 - v.x))
}
