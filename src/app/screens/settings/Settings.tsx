import { LinkButton } from '../../parts/Button.tsx'
import { useWords } from '../../words/use-words.tsx'
import { OfflineLine } from '../front/OfflineLine.tsx'
import { LanguageChoice } from '../LanguageChoice.tsx'
import { LightChoice } from '../LightChoice.tsx'
import { FrontBranch } from '../FrontBranch.tsx'
import { PRICES, SETTINGS, TRUST } from '../route.ts'
import { PhonePart } from './PhonePart.tsx'

/** What belongs to the phone and not to a plan. */
export function Settings() {
  const { say } = useWords()
  return (
    <FrontBranch path={SETTINGS} title={say('settings.title')}>
      <LanguageChoice />
      <LightChoice />
      <p className="quiet">{say('settings.light-why')}</p>
      <p className="quiet">{say('settings.units-why')}</p>
      <OfflineLine />
      <PhonePart />
      <LinkButton shape="big" icon="coins" href={PRICES}>
        {say('prices.title')}
      </LinkButton>
      <LinkButton shape="big" icon="info" href={TRUST}>
        {say('settings.trust')}
      </LinkButton>
    </FrontBranch>
  )
}
