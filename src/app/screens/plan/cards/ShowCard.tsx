import { useWords } from '../../../words/use-words.tsx'
import { LightChoice } from '../../LightChoice.tsx'
import { PlanChoice } from '../../fields/PlanChoice.tsx'

/** How figures are written in this plan, and how bright this phone shows them. */
export function ShowCard() {
  const { say } = useWords()
  return (
    <>
      <PlanChoice at="show.length" name={say('show.length')} names="length" keys={['mm', 'cm', 'm', 'ft-in']} />
      <PlanChoice at="show.mass" name={say('show.mass')} names="mass" keys={['kg', 'lb']} />
      <p className="quiet">{say('show.why')}</p>
      <LightChoice />
    </>
  )
}
