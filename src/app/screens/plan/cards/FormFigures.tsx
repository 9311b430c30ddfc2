import { FISH_DATA } from '../../../../core/fish/fish-data.ts'
import type { CATALOGUE_FORMS } from '../../../../core/plan/catalogue.ts'
import { useWords } from '../../../words/use-words.tsx'
import { sourceText } from '../../working/source-text.ts'

/** How far the figures of a form of fish spread, each with where it was read. */
export function FormFigures({ form }: { readonly form: (typeof CATALOGUE_FORMS)[number] }) {
  const { say, mass } = useWords()
  const { moisture, dressingLoss } = form.ranges
  const { layerFromKgM2, layerToKgM2, packedMostKg, source } = FISH_DATA.loading
  const lines = [
    { text: say('catch.usual-water', { from: moisture.from, to: moisture.to }), from: moisture.source },
    { text: say('catch.usual-loss', { from: dressingLoss.from, to: dressingLoss.to }), from: dressingLoss.source },
    {
      text:
        form.loading === 'packed'
          ? say('catch.usual-packed', { most: mass(packedMostKg) })
          : say('catch.usual-layer', { from: mass(layerFromKgM2), to: mass(layerToKgM2) }),
      from: source,
    },
  ]
  return (
    <details className="work-step">
      <summary>
        <b>{say('catch.usual')}</b>
      </summary>
      <ul className="stack">
        {lines.map(({ text, from }) => (
          <li key={text}>
            {text} <span className="quiet">{sourceText(from)}</span>
          </li>
        ))}
      </ul>
    </details>
  )
}
