import type { Derived } from '../../../core/basics/derived.ts'
import { KeyNum, Num } from '../../parts/Num.tsx'
import { inLine, type Figure } from '../../words/show.ts'
import { useWords } from '../../words/use-words.tsx'
import type { Words } from '../../words/words.ts'
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

interface Ends {
  readonly from: Derived
  readonly to: Derived
  readonly label: string
}

/** Both ends in one figure; one alone where they read the same. */
function rangeFigure({ from, to }: Ends, words: Words): Figure {
  const low = words.figure(from.value, from.unit)
  const high = words.figure(to.value, to.unit)
  if (low.figure === high.figure && low.unit === high.unit) return high
  return {
    ...high,
    figure: low.unit === high.unit ? `${low.figure}–${high.figure}` : `${inLine(low)}–${high.figure}`,
  }
}

/** A range is as much as is known: both ends stand on one line, and the tap opens how the upper end was reached. */
export function KeyRange(ends: Ends) {
  const words = useWords()
  const { showWorking } = usePlanHand()
  return (
    <KeyNum
      label={ends.label}
      {...rangeFigure(ends, words)}
      onOpen={() => {
        showWorking(ends.to)
      }}
    />
  )
}

/** The same in a row of a written sum. */
export function WorkedRange(ends: Ends) {
  const words = useWords()
  const { showWorking } = usePlanHand()
  return (
    <Num
      label={ends.label}
      {...rangeFigure(ends, words)}
      onOpen={() => {
        showWorking(ends.to)
      }}
    />
  )
}
