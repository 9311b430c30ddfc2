import { useState, type ReactNode } from 'react'
import type { Finding } from '../../../core/basics/finding.ts'
import { Button } from '../../parts/Button.tsx'
import { FindingLine } from '../../parts/FindingLine.tsx'
import { useWords } from '../../words/use-words.tsx'
import type { Words } from '../../words/words.ts'
import { usePlanHand } from '../fields/plan-in-hand.ts'
import { useMarked } from '../terms/Marked.tsx'

const SHOWN_AT_FIRST = 4

/** A finding and every number under which it stands on the drawings: the same thing in several places is said once. */
interface Said {
  readonly finding: Finding
  readonly text: string
  readonly numbers: readonly number[]
}

function saidOnce(findings: readonly Finding[], words: Words): Said[] {
  const said = new Map<string, Said>()
  for (const [index, finding] of findings.entries()) {
    const text = words.finding(finding)
    const before = said.get(text)
    said.set(text, { finding, text, ...before, numbers: [...(before?.numbers ?? []), index + 1] })
  }
  return [...said.values()]
}

/** What to know of the plan, numbered as on the drawings. `only` picks those of one decision and leaves them their numbers. */
export function Findings({
  findings,
  only,
  isShort = false,
}: {
  readonly findings: readonly Finding[]
  readonly only?: (finding: Finding) => boolean
  readonly isShort?: boolean
}) {
  const words = useWords()
  const { say } = words
  const [isOpen, setIsOpen] = useState(false)
  const all = saidOnce(findings, words).filter(({ finding }) => only?.(finding) ?? true)
  const most = Math.max(SHOWN_AT_FIRST, all.filter(({ finding }) => finding.level === 'problem').length)
  const isLong = isShort && all.length > most + 1
  const marked = useMarked(all.map(({ text }) => text))
  return (
    <div>
      <ul>
        {(isLong && !isOpen ? all.slice(0, most) : all).map((one, index) => (
          <OneFinding key={one.text} {...one} marked={marked[index]} />
        ))}
      </ul>
      {isLong && (
        <button
          type="button"
          className="more"
          aria-expanded={isOpen}
          onClick={() => {
            setIsOpen(!isOpen)
          }}
        >
          {isOpen ? say('plan.show-fewer') : say('plan.show-more', { count: all.length - most })}
        </button>
      )}
    </div>
  )
}

function OneFinding({ finding, marked, numbers }: Said & { readonly marked: ReactNode }) {
  const words = useWords()
  const { set } = usePlanHand()
  const { level, remedies } = finding
  const [number = 0, ...others] = numbers
  return (
    <FindingLine
      level={level}
      number={number}
      word={words.say(`finding.word.${level}`)}
      ways={
        remedies.length > 0 &&
        remedies.map((remedy, index) => (
          <Button
            key={remedy.kind}
            tone={level === 'problem' && index === 0 ? 'fire' : 'plain'}
            onPress={() => set(remedy.set)}
          >
            {words.remedy(remedy)}
          </Button>
        ))
      }
    >
      {marked}{' '}
      {others.length > 0 && words.say('plan.also-at', { numbers: others.map((one) => words.number(one)).join(', ') })}
    </FindingLine>
  )
}
