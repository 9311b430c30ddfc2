import { useMemo } from 'react'
import { levelCheck, type LevelProblem } from '../../../core/geometry/level-check.ts'
import { LevelsDrawing } from '../../drawings/SettingOutDrawing.tsx'
import { Button } from '../../parts/Button.tsx'
import { FindingLine } from '../../parts/FindingLine.tsx'
import { Sheet } from '../../parts/Sheet.tsx'
import { useWords } from '../../words/use-words.tsx'
import type { Words } from '../../words/words.ts'
import { usePlan } from '../fields/plan-in-hand.ts'
import { LengthReading } from '../fields/LengthReading.tsx'
import type { SiteSheetProps } from './site-sheet-props.ts'
import { SunTool } from './SunTool.tsx'
import { useSettingOut } from './use-setting-out.ts'

const CORNERS = ['A', 'B', 'C', 'D'] as const

/** Levels at the corners of the footing: how it falls, which corner to raise, and the first joints that bring the wall level. */
export function LevelsSheet({ worked, onClose }: SiteSheetProps) {
  const words = useWords()
  const { say, named, length } = words
  const { plan, set } = usePlan()
  const { pegs } = useSettingOut(worked)
  const { levels } = plan.built
  const { joint } = plan.walls
  const checked = useMemo(() => {
    const readings = CORNERS.flatMap((peg) => (levels[peg] === undefined ? [] : [{ peg, downM: levels[peg] }]))
    const again = levels['again']
    if (readings.length === 0) return null
    return levelCheck(pegs, readings, joint, again === undefined ? undefined : { peg: 'A', downM: again })
  }, [pegs, levels, joint])
  const value = checked?.ok === true ? checked.value : null
  return (
    <Sheet
      title={say('build.open.levels')}
      closeLabel={say('app.close')}
      onClose={onClose}
      height="full"
      tools={<SunTool />}
    >
      <div aria-live="polite" className="stack">
        {value !== null && (
          <>
            <h2 className="site-title">{say('build.levels-differ', { by: length(value.spreadM) })}</h2>
            <LevelsDrawing pegs={pegs} corners={value.corners} />
          </>
        )}
        <ul>
          {checked?.ok === false &&
            checked.problems.map((problem, index) => (
              <FindingLine
                key={problem.kind}
                number={index + 1}
                level={problem.kind === 'missing' ? 'caution' : 'problem'}
                word={say(`finding.word.${problem.kind === 'missing' ? 'caution' : 'problem'}`)}
              >
                {levelProblemText(problem, words)}
              </FindingLine>
            ))}
          {value !== null && (
            <FindingLine
              number={1}
              level={value.accepted ? 'good' : 'problem'}
              word={say(`finding.word.${value.accepted ? 'good' : 'problem'}`)}
            >
              {value.accepted
                ? say('build.levels-joint')
                : say('build.levels-raise', { pegs: value.toRaise.join(say('build.and')) })}
            </FindingLine>
          )}
        </ul>
        {value !== null && (
          <table className="site-table">
            <thead>
              <tr>
                <th scope="col">{say('build.peg')}</th>
                <th scope="col">{say('build.low-by')}</th>
                <th scope="col">{say('build.raise')}</th>
                <th scope="col">{say('build.first-joint')}</th>
              </tr>
            </thead>
            <tbody>
              {value.corners.map(({ peg, lowByM, raiseM, jointM }) => (
                <tr key={peg}>
                  <th scope="row">{peg}</th>
                  <td>{length(lowByM)}</td>
                  <td>{raiseM > 0 ? length(raiseM) : '–'}</td>
                  <td>{length(jointM)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
      </div>
      <p>{say('build.levels-how')}</p>
      <div className="readings">
        {[...CORNERS, 'again' as const].map((peg) => (
          <LengthReading
            key={peg}
            id={`built.levels.${peg}`}
            name={peg === 'again' ? say('build.level-again') : say('build.level-at', { peg })}
            lengthM={levels[peg] ?? null}
            limit="built.downM"
            onChange={(next) => {
              set({ [`built.levels.${peg}`]: next ?? undefined })
            }}
          />
        ))}
      </div>
      {checked !== null && (
        <Button
          shape="big"
          onPress={() => {
            set(Object.fromEntries(Object.keys(levels).map((peg) => [`built.levels.${peg}`, undefined])))
          }}
        >
          {say('build.clear-levels')}
        </Button>
      )}
      <p className="quiet">
        {named('build.levels-joint-range', { least: length(joint.minM), most: length(joint.maxM) })}
      </p>
    </Sheet>
  )
}

function levelProblemText(problem: LevelProblem, { named, length }: Words): string {
  const key = `level-problem.${problem.kind}`
  switch (problem.kind) {
    case 'missing':
      return named(key, { pegs: problem.pegs.join(', ') })
    case 'not-a-reading':
    case 'twice':
      return named(key, { peg: problem.peg })
    case 'moved':
      return named(key, { peg: problem.peg, by: length(problem.byM) })
    case 'too-far-apart':
      return named(key, { spread: length(problem.spreadM) })
    default:
      return problem satisfies never
  }
}
