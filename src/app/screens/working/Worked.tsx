import type { Derived } from '../../../core/basics/derived.ts'
import { KeyNum, Num } from '../../parts/Num.tsx'
import { useWords } from '../../words/use-words.tsx'
import { usePlanHand } from '../fields/plan-in-hand.ts'

/** A worked-out number of the plan; a tap opens its working. */
export function Worked({
  of,
  label,
  size = 'row',
}: {
  readonly of: Derived
  readonly label?: string
  readonly size?: 'row' | 'key' | 'main'
}) {
  const words = useWords()
  const { showWorking } = usePlanHand()
  return (
    <Num
      label={label ?? words.nameOf(of)}
      {...words.figure(of.value, of.unit)}
      size={size}
      onOpen={() => {
        showWorking(of)
      }}
    />
  )
}

/** The same under its name, as a key figure of a place. */
export function KeyFigure({ of, label }: { readonly of: Derived; readonly label: string }) {
  const words = useWords()
  const { showWorking } = usePlanHand()
  return (
    <KeyNum
      label={label}
      {...words.figure(of.value, of.unit)}
      onOpen={() => {
        showWorking(of)
      }}
    />
  )
}

/** A range is as much as is known: both ends stand on one line, and the tap opens how the upper end was reached. */
export function KeyRange({
  from,
  to,
  label,
}: {
  readonly from: Derived
  readonly to: Derived
  readonly label: string
}) {
  const words = useWords()
  const { showWorking } = usePlanHand()
  const low = words.figure(from.value, from.unit)
  const high = words.figure(to.value, to.unit)
  return (
    <KeyNum
      label={label}
      figure={low.figure === high.figure ? high.figure : `${low.figure}–${high.figure}`}
      unit={high.unit}
      onOpen={() => {
        showWorking(to)
      }}
    />
  )
}
