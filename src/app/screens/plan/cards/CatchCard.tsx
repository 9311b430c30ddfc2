import { CATALOGUE_FORMS } from '../../../../core/plan/catalogue.ts'
import { Picks } from '../../../parts/Picks.tsx'
import { useWords } from '../../../words/use-words.tsx'
import { PlanPicks } from '../../fields/PlanChoice.tsx'
import { MaybeField, PlanField } from '../../fields/PlanField.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'
import { CatchMakes } from './CatchMakes.tsx'
import { FormFigures } from './FormFigures.tsx'
import { ProductPicks } from './ProductPicks.tsx'

const FORMS = ['small-whole', 'large-cut', 'catfish', 'own'] as const

/** How much fish, of what kind, how it lies. A kind of fish sets the figures that are usual for it, as one step. */
export function CatchCard() {
  const { say, named, share } = useWords()
  const { plan, set } = usePlan()
  const { catch: fish } = plan
  const form = CATALOGUE_FORMS.find(({ key }) => key === fish.form)
  const choose = (chosen: (typeof FORMS)[number]) => {
    const usual = CATALOGUE_FORMS.find(({ key }) => key === chosen)
    set({
      'catch.form': chosen,
      ...(usual && {
        'catch.moistureFresh': usual.moisture,
        'catch.dressingLoss': usual.dressingLoss,
        'catch.loading': usual.loading,
        'catch.loadKgPerTray': usual.loadKgPerTray,
        'catch.loadKgPerM2': usual.loadKgPerM2,
      }),
    })
  }
  return (
    <>
      <div className="fields">
        <PlanField at="catch.freshKgPerDay" />
        <PlanField at="catch.firingsPerDay" />
      </div>
      <Picks
        name={say('catch.form')}
        choices={FORMS.map((key) => ({ key, title: named(`form.${key}`) }))}
        chosen={fish.form}
        onChoose={choose}
      />
      {form === undefined ? (
        <p className="quiet">{say('catch.own-why')}</p>
      ) : (
        <>
          <p className="quiet">{say('catch.form-why')}</p>
          <FormFigures form={form} />
        </>
      )}
      <PlanPicks
        at="catch.loading"
        name={say('catch.loading')}
        names="loading"
        keys={['single-layer', 'packed']}
        detail={(key) => named(`loading.${key}-why`)}
      />
      <PlanField at={fish.loading === 'packed' ? 'catch.loadKgPerTray' : 'catch.loadKgPerM2'} />
      <h3>{say('catch.seasons')}</h3>
      <div className="fields">
        <MaybeField at="catch.peakKgPerDay" begin={fish.freshKgPerDay} />
        <MaybeField at="catch.leanKgPerDay" begin={fish.freshKgPerDay} />
      </div>
      <h3>{say('catch.fish-itself')}</h3>
      <div className="fields">
        <PlanField at="catch.dressingLoss" />
        <PlanField
          at="catch.moistureFresh"
          refuse={(water) =>
            water > fish.moistureFinal ? null : say('catch.no-wetter', { moisture: share(fish.moistureFinal) })
          }
        />
      </div>
      <ProductPicks />
      <CatchMakes />
    </>
  )
}
