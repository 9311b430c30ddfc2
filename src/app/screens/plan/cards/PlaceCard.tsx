import { KEPT_DISTANCES, type NeighbourField } from '../../../../core/geometry/neighbours.ts'
import type { Facing } from '../../../../core/geometry/wind.ts'
import type { WorkedOut } from '../../../../core/work-out.ts'
import { inLine } from '../../../words/show.ts'
import { useWords } from '../../../words/use-words.tsx'
import { fieldWay } from '../../fields/field-way.ts'
import { PlanChoice } from '../../fields/PlanChoice.tsx'
import { MaybeField, PlanField } from '../../fields/PlanField.tsx'
import { usePlan } from '../../fields/plan-in-hand.ts'
import { CompassPicture } from '../../pictures/CompassPicture.tsx'
import { KeyFigure } from '../../working/Worked.tsx'
import { WindField } from './WindField.tsx'

/** Where one begins to type a distance that is known, m. */
const BEGIN_M: Readonly<Record<NeighbourField, number>> = {
  houseM: 20,
  thatchM: 20,
  boundaryM: 10,
  fuelStoreM: 5,
  treesM: 10,
}

/** Where the kiln stands: winds, neighbours, shelter. */
export function PlaceCard({ worked }: { readonly worked: WorkedOut }) {
  const words = useWords()
  const { say } = words
  const { plan } = usePlan()
  const { place } = plan
  const { facing } = worked.site
  return (
    <>
      <h3>{say('place.wind')}</h3>
      <p className="quiet">{say('place.wind-why')}</p>
      <div className="fields">
        <WindField at="windDayDeg" />
        <WindField at="windNightDeg" />
      </div>
      <PlanChoice at="place.facing" name={say('place.facing')} names="facing" keys={['into-wind', 'lee', 'own']} />
      <p className="quiet">{say(`place.facing-why.${place.facing}`)}</p>
      {place.facing === 'own' && <WindField at="frontDeg" />}
      <Looks facing={facing} place={place} />
      <PlanField at="place.declinationDeg" help={say('place.declination-why')} />
      <h3>{say('place.distances')}</h3>
      <p className="quiet">{say('place.distances-why')}</p>
      <div className="fields">
        {KEPT_DISTANCES.map(({ field, leastM }) => (
          <MaybeField
            key={field}
            at={`place.${field}`}
            begin={BEGIN_M[field]}
            help={say('place.keep', { least: inLine(fieldWay(`place.${field}`, words).show(leastM)) })}
          />
        ))}
        {place.houseM !== null && <WindField at="houseDeg" />}
      </div>
      <h3>{say('place.shelter')}</h3>
      <PlanChoice at="place.shelter" name={say('place.shelter')} names="shelter" keys={['none', 'open-roof']} />
      <p className="quiet">{say('place.shelter-why')}</p>
      {place.shelter === 'open-roof' && (
        <div className="fields">
          <PlanField at="place.shelterHeadroomM" />
          <PlanField at="place.shelterOverhangM" />
        </div>
      )}
    </>
  )
}

/** Where the front looks by true north and by the needle, and what each wind does there. */
function Looks({ facing, place }: { readonly facing: Facing; readonly place: WorkedOut['plan']['place'] }) {
  const words = useWords()
  const { say, named } = words
  const { front, frontMagnetic, day, night } = facing
  return (
    <>
      <CompassPicture place={place} frontDeg={front?.value ?? null} label={say('place.compass')} />
      {front !== null && (
        <div className="figs step-figs">
          <KeyFigure label={words.nameOf(front)} of={front} />
          {frontMagnetic !== null && <KeyFigure label={words.nameOf(frontMagnetic)} of={frontMagnetic} />}
        </div>
      )}
      {(day !== null || night !== null) && (
        <p>
          {day !== null && named(`place.by-day.${day}`)} {night !== null && named(`place.by-night.${night}`)}
        </p>
      )}
    </>
  )
}
