import { useMemo } from 'react'
import { adjustTapes, type TapeAdjustment } from '../../../core/geometry/tape-check.ts'
import type { TapeToTake } from '../../../core/geometry/tape-plan.ts'
import { TapeDrawing } from '../../drawings/SettingOutDrawing.tsx'
import { Button, LinkButton } from '../../parts/Button.tsx'
import { FindingLine } from '../../parts/FindingLine.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { useWords } from '../../words/use-words.tsx'
import { usePlan } from '../fields/plan-in-hand.ts'
import { cardHref } from '../route.ts'
import { LengthReading } from '../fields/LengthReading.tsx'
import type { SiteSheetProps } from './site-sheet-props.ts'
import { SunTool } from './SunTool.tsx'
import { moveText, tapeProblemText } from './tape-text.ts'
import { useSettingOut } from './use-setting-out.ts'
import { useTick } from './use-tick.ts'

const tapeKey = ({ from, to }: Pick<TapeToTake, 'from' | 'to'>): string => `${from}-${to}`

/** The tapes as read: how far out of square, which reading is doubtful, and how to move each peg. */
export function TapesSheet({ planId, worked, onClose }: SiteSheetProps) {
  const words = useWords()
  const { say } = words
  const { plan, set } = usePlan()
  const tick = useTick()
  const { pegs, tapes } = useSettingOut(worked)
  const read = plan.built.tapes
  const readings = useMemo(
    () =>
      tapes.flatMap(({ from, to }) => {
        const lengthM = read[tapeKey({ from, to })]
        return lengthM === undefined ? [] : [{ from, to, lengthM }]
      }),
    [tapes, read],
  )
  const checked = useMemo(() => (readings.length === 0 ? null : adjustTapes(pegs, readings)), [pegs, readings])
  const adjusted = checked?.ok === true ? checked.value : null
  const bays = tapes.filter(({ kind }) => kind === 'bay')
  const clear = () => set(Object.fromEntries(readings.map((one) => [`built.tapes.${tapeKey(one)}`, undefined])))
  const field = (tape: TapeToTake) => (
    <TapeField key={tapeKey(tape)} tape={tape} lengthM={read[tapeKey(tape)] ?? null} adjusted={adjusted} />
  )
  return (
    <Sheet
      title={say('build.open.tapes')}
      closeLabel={say('app.close')}
      onClose={onClose}
      height="full"
      tools={<SunTool />}
    >
      <div aria-live="polite" className="stack">
        <h2 className="site-title">{headline(adjusted, readings.length, words)}</h2>
        <TapeDrawing pegs={pegs} tapes={tapes} adjusted={adjusted} />
        <ul>
          {checked?.ok === false &&
            checked.problems.map((problem, index) => (
              <FindingLine
                key={index}
                number={index + 1}
                level={problem.kind === 'not-enough' ? 'caution' : 'problem'}
                word={say(`finding.word.${problem.kind === 'not-enough' ? 'caution' : 'problem'}`)}
              >
                {tapeProblemText(problem, words)}
              </FindingLine>
            ))}
          {adjusted !== null && (
            <Verdict
              adjusted={adjusted}
              onAgain={clear}
              onAccept={() => set({ 'build.ticks.setout-diagonals': tick() })}
            />
          )}
        </ul>
      </div>
      <p>{say('build.tapes-how')}</p>
      <div className="readings">{tapes.filter(({ kind }) => kind !== 'bay').map(field)}</div>
      {bays.length > 0 && (
        <details className="work-step" open={bays.some((tape) => read[tapeKey(tape)] !== undefined)}>
          <summary>
            <b>{say('build.more-tapes')}</b>
          </summary>
          <div className="readings">{bays.map(field)}</div>
        </details>
      )}
      <div className="ways">
        {readings.length > 0 && (
          <Button shape="big" onPress={clear}>
            {say('build.clear-tapes')}
          </Button>
        )}
        <LinkButton href={cardHref(planId, 'build', 'setout')} shape="big" icon="peg">
          {say('build.open.setout')}
        </LinkButton>
      </div>
    </Sheet>
  )
}

function headline(
  adjusted: TapeAdjustment | null,
  count: number,
  { say, length }: ReturnType<typeof useWords>,
): string {
  if (count === 0) return say('build.tapes-none')
  if (adjusted === null) return say('build.tapes-open', { count })
  if (adjusted.disagree) return say('build.tapes-doubt')
  if (adjusted.accepted) return say('build.tapes-square')
  const mostM = Math.max(...adjusted.moves.map(({ along, across }) => Math.hypot(along?.byM ?? 0, across?.byM ?? 0)))
  return say('build.tapes-out', { by: length(mostM) })
}

function TapeField({
  tape,
  lengthM,
  adjusted,
}: {
  readonly tape: TapeToTake
  readonly lengthM: number | null
  readonly adjusted: TapeAdjustment | null
}) {
  const { say, length } = useWords()
  const { set } = usePlan()
  const { from, to, planM } = tape
  const checked = adjusted?.tapes.find((one) => one.from === from && one.to === to)
  const residual = checked === undefined || adjusted === null || adjusted.redundancy < 1 ? null : checked.correctionM
  const at = `built.tapes.${tapeKey(tape)}`
  return (
    <LengthReading
      id={at}
      name={say('build.from-to', { from, to })}
      lengthM={lengthM}
      limit="built.tapeM"
      help={
        residual === null
          ? say('build.should-be', { length: length(planM) })
          : say('build.should-be-off', { length: length(planM), residual: length(residual) })
      }
      onChange={(next) => {
        set({ [at]: next ?? undefined })
      }}
    />
  )
}

/** What to do now: tape again, move pegs, or go on. */
function Verdict({
  adjusted,
  onAgain,
  onAccept,
}: {
  readonly adjusted: TapeAdjustment
  readonly onAgain: () => void
  readonly onAccept: () => void
}) {
  const words = useWords()
  const { say, named, length } = words
  const { suspicious, disagree, accepted, redundancy, moves } = adjusted
  const told = moves.map((move) => moveText(move, words)).filter((text) => text !== null)
  if (disagree)
    return (
      <FindingLine level="problem" number={1} word={say('finding.word.problem')}>
        {suspicious === null
          ? named('tape.disagree')
          : named('tape.suspicious', {
              from: suspicious.from,
              to: suspicious.to,
              read: length(suspicious.readM),
              expected: length(suspicious.expectedM),
            })}
      </FindingLine>
    )
  return (
    <>
      <FindingLine
        level={accepted ? 'good' : 'problem'}
        number={1}
        word={say(`finding.word.${accepted ? 'good' : 'problem'}`)}
        ways={
          accepted ? (
            <Button tone="fire" onPress={onAccept}>
              {say('build.pegs-stand')}
            </Button>
          ) : (
            <Button tone="fire" onPress={onAgain}>
              {say('build.moved-again')}
            </Button>
          )
        }
      >
        {accepted ? (
          named('tape.accepted')
        ) : (
          <>
            {say('build.not-square')} {told.map((text) => `${text}.`).join(' ')}
          </>
        )}
      </FindingLine>
      {redundancy < 1 && (
        <FindingLine level="caution" number={2} word={say('finding.word.caution')}>
          {named('tape.unchecked')}
        </FindingLine>
      )}
    </>
  )
}
