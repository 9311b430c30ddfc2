import type { Plan } from '../../../core/plan/schema.ts'
import type { PlanCard } from '../plan/cards.ts'
import {
  ChambersPicture,
  FishPicture,
  GroundLinePicture,
  MixPicture,
  MoneyPicture,
  OpeningPicture,
  TrayPicture,
  UnitsPicture,
  WallsPicture,
  WindPicture,
} from './CardPictures.tsx'

/** The picture of a decision's present answer. */
export function PlanPicture({ card, plan }: { readonly card: PlanCard; readonly plan: Plan }) {
  switch (card) {
    case 'catch':
      return <FishPicture />
    case 'chambers':
      return <ChambersPicture count={plan.chambers.count} />
    case 'walls':
      return <WallsPicture unit={plan.walls.unit} />
    case 'openings':
      return <OpeningPicture />
    case 'ground':
      return <GroundLinePicture />
    case 'trays':
      return <TrayPicture />
    case 'place':
      return <WindPicture />
    case 'mixes':
      return <MixPicture />
    case 'money':
      return <MoneyPicture />
    case 'show':
      return <UnitsPicture />
    default:
      return card satisfies never
  }
}
