import type { WorkedOut } from '../../../core/work-out.ts'
import type { PlanRoute } from '../PlanHere.tsx'
import { placeHref } from '../route.ts'
import { useCloseCard } from '../use-close-card.ts'
import { BatchSheet } from './BatchSheet.tsx'
import type { SiteCard } from './build-card.ts'
import { CourseSheet } from './CourseSheet.tsx'
import { LevelsSheet } from './LevelsSheet.tsx'
import { MeasuredSheet } from './MeasuredSheet.tsx'
import { NeededSheet } from './NeededSheet.tsx'
import { SetOutSheet } from './SetOutSheet.tsx'
import './site.css'
import { TapesSheet } from './TapesSheet.tsx'

/** The screens for the work on the site: loaded when the first of them is opened. */
export function SiteSheet({
  card,
  route,
  worked,
}: {
  readonly card: SiteCard
  readonly route: PlanRoute
  readonly worked: WorkedOut
}) {
  const onClose = useCloseCard(placeHref(route.id, 'build'))
  const props = { planId: route.id, worked, field: route.field, onClose }
  switch (card) {
    case 'setout':
      return <SetOutSheet {...props} />
    case 'tapes':
      return <TapesSheet {...props} />
    case 'levels':
      return <LevelsSheet {...props} />
    case 'course':
      return <CourseSheet {...props} />
    case 'measured':
      return <MeasuredSheet {...props} />
    case 'batch':
      return <BatchSheet {...props} />
    case 'needed':
      return <NeededSheet {...props} />
    default:
      return card satisfies never
  }
}
