import { LinkButton } from '../../parts/Button.tsx'
import { Header } from '../../parts/Header.tsx'
import { useWords } from '../../words/use-words.tsx'
import { OfflineLine } from '../front/OfflineLine.tsx'
import { LanguageChoice } from '../LanguageChoice.tsx'
import { LightChoice } from '../LightChoice.tsx'
import { Page } from '../Page.tsx'
import { FRONT, PRICES, SETTINGS, TRUST } from '../route.ts'
import { PhonePart } from './PhonePart.tsx'

/** What belongs to the phone and not to a plan. */
export function Settings() {
  const { say } = useWords()
  return (
    <Page
      path={SETTINGS}
      title={`${say('settings.title')} · ${say('app.name')}`}
      kind="single"
      header={
        <Header title={<h1>{say('settings.title')}</h1>} back={{ href: FRONT, label: say('app.back-to-plans') }} />
      }
    >
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
    </Page>
  )
}
