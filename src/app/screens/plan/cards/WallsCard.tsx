import { withWalls } from '../../../../core/choosing/with-walls.ts'
import type { WorkedOut } from '../../../../core/work-out.ts'
import { CATALOGUE_UNITS } from '../../../../core/plan/catalogue.ts'
import { Picks } from '../../../parts/Picks.tsx'
import { useWords } from '../../../words/use-words.tsx'
import { PlanChoice } from '../../fields/PlanChoice.tsx'
import { PlanField } from '../../fields/PlanField.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'
import { UnitPicture } from '../../pictures/UnitPicture.tsx'
import { CoursingChoice } from './CoursingChoice.tsx'
import { MeasuredUnits } from './MeasuredUnits.tsx'
import { NearSizes } from './NearSizes.tsx'
import { WallSearch } from './WallSearch.tsx'

/** What the walls are laid of, how thick their joints, how high, and what fills them. */
export function WallsCard({ worked }: { readonly worked: WorkedOut }) {
  const { say, named, sizes } = useWords()
  const { plan, edit } = usePlan()
  const { unit } = plan.walls
  const choose = (key: string) => {
    const chosen = CATALOGUE_UNITS.find((one) => one.key === key)
    if (chosen === undefined) return
    edit((now) => withWalls(now, { unit: chosen, leaf: now.walls.leaf, bond: now.walls.bond }))
  }
  return (
    <>
      <Picks
        name={say('walls.unit')}
        choices={CATALOGUE_UNITS.map((one) => ({
          key: one.key,
          title: named(`family.${one.family}`),
          detail: sizes(one.lengthM, one.widthM, one.heightM),
          picture: <UnitPicture unit={one} />,
        }))}
        chosen={unit.key}
        onChoose={choose}
      />
      <p className="quiet">{say('walls.one-scale')}</p>
      <h3>{say('walls.own')}</h3>
      <p className="quiet">{say('walls.own-why')}</p>
      <div className="fields">
        <PlanField at="walls.unit.lengthM" />
        <PlanField at="walls.unit.widthM" />
        <PlanField at="walls.unit.heightM" />
        <PlanField at="walls.unit.voidFraction" />
        <PlanField at="walls.unit.densityKgM3" />
        <PlanField at="walls.cutLossM" />
      </div>
      <MeasuredUnits />
      <PlanChoice at="walls.leaf" name={say('walls.leaf')} names="leaf" keys={['single', 'one-brick']} />
      {plan.walls.leaf === 'one-brick' && (
        <PlanChoice at="walls.bond" name={say('walls.bond')} names="bond" keys={['stretcher', 'english', 'header']} />
      )}
      <h3>{say('walls.joint')}</h3>
      <div className="fields">
        <PlanField at="walls.joint.usualM" />
        <PlanField at="walls.joint.minM" />
        <PlanField at="walls.joint.maxM" />
      </div>
      <h3>{say('walls.height')}</h3>
      <div className="fields">
        <PlanField at="walls.aboveM" />
        <PlanField at="walls.belowM" />
      </div>
      <CoursingChoice coursing={worked.coursing} />
      <WallSearch worked={worked} />
      <NearSizes />
      {unit.cells.length > 0 && (
        <>
          <PlanChoice at="walls.fill" name={say('walls.fill')} names="fill" keys={['none', 'sand', 'clay']} />
          <p className="quiet">{say('walls.fill-why')}</p>
        </>
      )}
      <h3>{say('walls.face')}</h3>
      <div className="fields">
        <PlanField at="walls.liningM" />
        <PlanField at="walls.renderM" />
      </div>
    </>
  )
}
