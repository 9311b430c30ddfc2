import { useState } from 'react'
import { slopeByPegs, slopeReadings, type SlopeProblem } from '../../../../core/geometry/slope-by-pegs.ts'
import { Button } from '../../../parts/Button.tsx'
import { FindingLine } from '../../../parts/FindingLine.tsx'
import { useWords } from '../../../words/use-words.tsx'
import type { Plan } from '../../../../core/plan/schema.ts'
import { LengthReading } from '../../fields/LengthReading.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'
import { SlopePicture } from '../../pictures/SlopePicture.tsx'

const HEIGHTS = ['frontLeftM', 'rightM', 'rightApartM', 'backM', 'backApartM'] as const

/** Slopes that the heights give, by field of the plan; a way that has not been read keeps what was typed. */
function slopesRead(ground: Plan['ground']): {
  readonly slopes: Readonly<Record<string, number>>
  readonly problems: readonly SlopeProblem[]
} {
  const readings = slopeReadings(ground)
  if (readings === null) return { slopes: {}, problems: [] }
  const read = slopeByPegs(readings)
  if (!read.ok) return { slopes: {}, problems: read.problems }
  return {
    slopes: {
      ...(readings.right !== null && { 'ground.slopeAcross': read.value.across }),
      ...(readings.back !== null && { 'ground.slopeBack': read.value.back }),
    },
    problems: [],
  }
}

/** The slope from heights under one level line at three pegs; what was read stays in the plan, and the slope that follows is taken at once. */
export function SlopeByPegs() {
  const { say, named } = useWords()
  const { plan, set } = usePlan()
  const { ground } = plan
  const { slopes, problems } = slopesRead(ground)
  const inPlan: Readonly<Record<string, number>> = {
    'ground.slopeAcross': ground.slopeAcross,
    'ground.slopeBack': ground.slopeBack,
  }
  const isOther = Object.entries(slopes).some(([field, slope]) => Math.abs(slope - (inPlan[field] ?? 0)) > 5e-4)
  const isRead = HEIGHTS.some((height) => ground.heights[height] !== null)
  const [isBegun] = useState(isRead)
  return (
    <details className="work-step" open={isBegun}>
      <summary>
        <b>{say('ground.by-pegs')}</b>
      </summary>
      <div className="stack">
        <p>{say('ground.by-pegs-how')}</p>
        <SlopePicture />
        <div className="readings">
          {HEIGHTS.map((height) => (
            <LengthReading
              key={height}
              id={`ground.heights.${height}`}
              name={named(`field.ground.heights.${height}`)}
              lengthM={ground.heights[height]}
              limit={height.endsWith('ApartM') ? 'ground.apartM' : 'ground.heightM'}
              onChange={(lengthM) => {
                const next = { ...ground, heights: { ...ground.heights, [height]: lengthM } }
                set({ [`ground.heights.${height}`]: lengthM, ...slopesRead(next).slopes })
              }}
            />
          ))}
        </div>
        <ul aria-live="polite">
          {problems.map((problem, index) => {
            const level = problem.kind === 'terrace-first' ? 'problem' : 'caution'
            return (
              <FindingLine key={index} level={level} number={index + 1} word={say(`finding.word.${level}`)}>
                {named(`slope-problem.${problem.kind}`, { peg: 'peg' in problem ? problem.peg : '' })}
              </FindingLine>
            )
          })}
          {isOther && (
            <FindingLine
              level="caution"
              number={1}
              word={say('finding.word.caution')}
              ways={<Button onPress={() => set(slopes)}>{say('ground.take-slope')}</Button>}
            >
              {say('ground.slope-other')}
            </FindingLine>
          )}
        </ul>
        {isRead && (
          <Button onPress={() => set(Object.fromEntries(HEIGHTS.map((height) => [`ground.heights.${height}`, null])))}>
            {say('build.clear-levels')}
          </Button>
        )}
      </div>
    </details>
  )
}
