import { viewOf } from '../../../core/documents/drawings/views.ts'
import { airView, turningView } from '../../../core/documents/drawings/shown-view.ts'
import { CATALOGUE_UNITS } from '../../../core/plan/catalogue.ts'
import { Icon } from '../../parts/Icon.tsx'
import { ShownDrawing } from '../how/ShownDrawing.tsx'
import { sampleKiln } from '../how/sample-kiln.ts'
import { UnitPicture } from '../pictures/UnitPicture.tsx'
import { TERM_GROUPS, type TermPictureOf } from './pictures.ts'
import { SmallPicture } from './SmallPictures.tsx'

/** What a trade word means, as a picture. */
export function TermPicture({ term }: { readonly term: string }) {
  const shown = Object.values(TERM_GROUPS).find((group) => group[term] !== undefined)?.[term]
  return shown === undefined ? null : <Picture shown={shown} />
}

function Picture({ shown }: { readonly shown: TermPictureOf }) {
  if ('small' in shown) return <SmallPicture name={shown.small} />
  if ('icon' in shown) return <Icon name={shown.icon} />
  if ('unit' in shown) {
    const unit = CATALOGUE_UNITS.find(({ key }) => key === shown.unit)
    return unit ? <UnitPicture unit={unit} /> : null
  }
  return <ShownDrawing drawing={drawn(shown.view)} ink={shown.ink} nth={shown.nth} />
}

function drawn(view: Extract<TermPictureOf, { view: unknown }>['view']) {
  const kiln = sampleKiln()
  if (view === 'air') return airView(kiln, kiln.layout)
  if (view === 'turning') return turningView(kiln)
  return viewOf(view, kiln, [])
}
