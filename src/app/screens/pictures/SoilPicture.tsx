import { PicketPicture, ThumbPicture } from './GroundPicture.tsx'

/** The hand test that tells a soil: a picket for sand and gravel, a thumb for clay. */
export function SoilPicture({ soil }: { readonly soil: string }) {
  switch (soil) {
    case 'clay-soft':
      return <ThumbPicture depth="soft" />
    case 'clay-firm':
      return <ThumbPicture depth="firm" />
    case 'clay-stiff':
    case 'laterite':
      return <ThumbPicture depth="stiff" />
    case 'sand-loose':
      return <PicketPicture depth="hand" />
    case 'not-to-build':
      return <PicketPicture depth="deep" />
    default:
      return <PicketPicture depth="short" />
  }
}
