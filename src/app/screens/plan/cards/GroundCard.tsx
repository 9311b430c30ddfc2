import { CATALOGUE_SOILS } from '../../../../core/plan/catalogue.ts'
import { Picks, Segments } from '../../../parts/Picks.tsx'
import { useWords } from '../../../words/use-words.tsx'
import { PlanChoice } from '../../fields/PlanChoice.tsx'
import { MaybeField, PlanField } from '../../fields/PlanField.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'
import { SoilPicture } from '../../pictures/SoilPicture.tsx'

/** What the kiln stands on. */
export function GroundCard() {
  const { say, named } = useWords()
  const { plan, set } = usePlan()
  const { ground } = plan
  return (
    <>
      <Picks
        name={say('ground.soil')}
        choices={CATALOGUE_SOILS.map(({ key }) => ({
          key,
          title: named(`soil.${key}`),
          detail: named(`soil-test.${key}`),
          picture: <SoilPicture soil={key} />,
        }))}
        chosen={ground.soil}
        onChoose={(key) => set({ 'ground.soil': key })}
      />
      <p className="quiet">{say('ground.soil-why')}</p>
      <PlanChoice at="ground.footing" name={say('ground.footing')} names="footing" keys={['strip', 'pad']} />
      <div className="fields">
        <PlanField at="ground.projectionM" />
        <PlanField at="ground.thicknessM" />
      </div>
      <h3>{say('ground.slope')}</h3>
      <p className="quiet">{say('ground.slope-why')}</p>
      <div className="fields">
        <PlanField at="ground.slopeAcross" />
        <PlanField at="ground.slopeBack" />
      </div>
      {(ground.slopeAcross !== 0 || ground.slopeBack !== 0) && (
        <PlanChoice
          at="ground.formation"
          name={say('ground.formation')}
          names="formation"
          keys={['level', 'stepped']}
        />
      )}
      <h3>{say('ground.water')}</h3>
      <div className="fields">
        <MaybeField at="ground.waterTableM" begin={1} />
        <MaybeField at="ground.floodM" begin={0} />
      </div>
      <PlanChoice at="ground.rain" name={say('ground.rain')} names="rain" keys={['away', 'toward', 'unknown']} />
      <h3>{say('ground.extras')}</h3>
      <div className="fields">
        <PlanField at="ground.hardcoreM" />
        <PlanField at="ground.hearthM" />
        <PlanField at="ground.apronM" />
      </div>
      <Segments
        name={say('ground.damp')}
        isNameShown
        choices={[
          { key: 'no', label: say('ground.damp-no') },
          { key: 'yes', label: say('ground.damp-yes') },
        ]}
        chosen={ground.dampCourse ? 'yes' : 'no'}
        onChoose={(key) => set({ 'ground.dampCourse': key === 'yes' })}
      />
      <h3>{say('ground.measures')}</h3>
      <div className="fields">
        <PlanField at="ground.panM3" />
        <PlanField at="ground.barrowM3" />
      </div>
    </>
  )
}
