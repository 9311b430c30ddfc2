import { useState } from 'react'
import { bearingRange } from '../../../../core/geometry/bearing-tables.ts'
import { testsAsked, type HandTests } from '../../../../core/geometry/soil-test.ts'
import { Button } from '../../../parts/Button.tsx'
import { FindingLine } from '../../../parts/FindingLine.tsx'
import { Picks } from '../../../parts/Picks.tsx'
import { useWords } from '../../../words/use-words.tsx'
import { LengthReading } from '../../fields/LengthReading.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'
import { PicketPicture, ThumbPicture } from '../../pictures/GroundPicture.tsx'

/** The answers of each test that is answered in words, in the order of the table. */
const ANSWERS = {
  ground: ['natural', 'filled', 'peat', 'cracks-wide', 'mud', 'unsure'],
  handful: ['sticky-ribbon', 'crumbles', 'falls-apart', 'stones', 'hard-red', 'rock', 'unsure'],
  thumb: ['sinks-easily', 'moderate', 'hardly', 'unsure'],
} as const satisfies Partial<Record<keyof HandTests, readonly string[]>>

const THUMBS = { 'sinks-easily': 'soft', moderate: 'firm', hardly: 'stiff' } as const
const DEEP_M = 0.2

/** The soil by hand, one test after the other: what was answered stays in the plan, and the class that follows is taken at once. */
export function SoilTest() {
  const { say, named } = useWords()
  const { plan, set } = usePlan()
  const { tests, soil } = plan.ground
  const [isBegun] = useState(tests.ground !== null)
  const { asked, verdict } = testsAsked(tests)
  const answer = (test: keyof HandTests, value: string | number | null) => {
    const next = testsAsked({ ...tests, [test]: value }).verdict
    set({ [`ground.tests.${test}`]: value, ...(next !== null && { 'ground.soil': next.soil }) })
  }
  return (
    <details className="work-step" open={isBegun}>
      <summary>
        <b>{say('ground.by-hand')}</b>
      </summary>
      <div className="stack">
        <p>{say('ground.by-hand-how')}</p>
        {asked.map((test, index) => (
          <section key={test} className="stack">
            <h3>{`${String(index + 1)}. ${named(`soil-ask.${test}`)}`}</h3>
            <p>{named(`soil-how.${test}`)}</p>
            {test === 'picketM' ? (
              <>
                <PicketPicture depth={(tests.picketM ?? 0) > DEEP_M ? 'deep' : 'short'} />
                <LengthReading
                  id="ground.tests.picketM"
                  name={say('field.ground.picketM')}
                  lengthM={tests.picketM}
                  limit="ground.picketM"
                  onChange={(picketM) => {
                    answer('picketM', picketM)
                  }}
                />
              </>
            ) : (
              <Picks
                name={named(`soil-ask.${test}`)}
                isNameShown={false}
                choices={ANSWERS[test].map((key) => ({
                  key,
                  title: named(`soil-answer.${test}.${key}`),
                  ...(key in THUMBS && { picture: <ThumbPicture depth={THUMBS[key as keyof typeof THUMBS]} /> }),
                }))}
                chosen={tests[test]}
                onChoose={(key) => {
                  answer(test, key)
                }}
              />
            )}
          </section>
        ))}
        <div aria-live="polite">
          {verdict !== null && (
            <ul>
              <Verdict
                {...verdict}
                isTaken={verdict.soil === soil}
                onTake={() => set({ 'ground.soil': verdict.soil })}
              />
            </ul>
          )}
        </div>
        {tests.ground !== null && (
          <Button onPress={() => set({ 'ground.tests': { ground: null, handful: null, thumb: null, picketM: null } })}>
            {say('ground.test-again')}
          </Button>
        )}
      </div>
    </details>
  )
}

/** The class and the row of the table that decided; a button where the plan goes by another class. */
function Verdict({
  soil,
  row,
  isTaken,
  onTake,
}: {
  readonly soil: string
  readonly row: string
  readonly isTaken: boolean
  readonly onTake: () => void
}) {
  const { say, named, number } = useWords()
  const range = bearingRange(soil)
  const level = range === null ? 'problem' : isTaken ? 'good' : 'caution'
  const [low, high] = [range?.low, range?.high].map((one) => number((one?.bearingPa ?? 0) / 1000, 0))
  return (
    <FindingLine
      level={level}
      number={1}
      word={say(`finding.word.${level}`)}
      ways={!isTaken && <Button onPress={onTake}>{say('ground.take-class')}</Button>}
    >
      <b>{named(`soil.${soil}`)}.</b> {named(`soil-rule.${row}`)}{' '}
      {range === null
        ? say('ground.ask-advice')
        : low === high
          ? say('ground.carries', { low: low ?? '' })
          : say('ground.carries-range', { low: low ?? '', high: high ?? '' })}
    </FindingLine>
  )
}
