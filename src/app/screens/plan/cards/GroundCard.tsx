import { CATALOGUE_SOILS } from '../../../../core/plan/catalogue.ts'
import type { Derived } from '../../../../core/basics/derived.ts'
import type { WorkedOut } from '../../../../core/work-out.ts'
import { Picks, Segments } from '../../../parts/Picks.tsx'
import { useWords } from '../../../words/use-words.tsx'
import { litreWay } from '../../fields/litre-way.ts'
import { PlanChoice } from '../../fields/PlanChoice.tsx'
import { MaybeField, NumberField, PlanField } from '../../fields/PlanField.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'
import { SoilPicture } from '../../pictures/SoilPicture.tsx'
import { KeyFigure } from '../../working/Worked.tsx'
import { SlopeByPegs } from './SlopeByPegs.tsx'
import { SoilTest } from './SoilTest.tsx'

/** What the kiln stands on. */
export function GroundCard({ worked }: { readonly worked: WorkedOut }) {
  const { say, named } = useWords()
  const { plan, set } = usePlan()
  const { ground } = plan
  const { foundation } = worked.site
  const { dig, loose, backfill, surplus, surplusPans, surplusBarrows } = worked.geometry.earthworks
  return (
    <>
      <SoilTest />
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
      <Figures
        name={say('ground.holds')}
        of={[
          foundation.pressure,
          foundation.bearing,
          foundation.neededThickness,
          ...(foundation.neededProjection === null ? [] : [foundation.neededProjection]),
        ]}
      />
      <h3>{say('ground.slope')}</h3>
      <p className="quiet">{say('ground.slope-why')}</p>
      <div className="fields">
        <PlanField at="ground.slopeAcross" outside={say('ground.slope-outside')} />
        <PlanField at="ground.slopeBack" outside={say('ground.slope-outside')} />
      </div>
      <SlopeByPegs />
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
      <p className="quiet">{say('ground.damp-why')}</p>
      <Figures name={say('ground.dig')} of={[dig, loose, backfill, surplus, surplusBarrows, surplusPans]} />
      <p className="quiet">{say('ground.dig-why')}</p>
      <h3>{say('ground.measures')}</h3>
      <div className="fields">
        {(['panM3', 'barrowM3'] as const).map((measure) => (
          <NumberField
            key={measure}
            id={`ground.${measure}`}
            name={say(`field.ground.${measure}`)}
            value={ground[measure]}
            way={litreWay(`ground.${measure}`)}
            onChange={(next) => set({ [`ground.${measure}`]: next })}
            help={say('build.holds-how')}
          />
        ))}
      </div>
    </>
  )
}

/** Numbers that follow from the answers above them; each opens its working. */
function Figures({ name, of }: { readonly name: string; readonly of: readonly Derived[] }) {
  const words = useWords()
  return (
    <section>
      <h3>{name}</h3>
      <div className="figs step-figs">
        {of.map((one) => (
          <KeyFigure key={one.id} label={words.nameOf(one)} of={one} />
        ))}
      </div>
    </section>
  )
}
