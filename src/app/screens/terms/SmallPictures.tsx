import { Fire } from '../../drawings/signs.tsx'

const FISH = 'M8 30C26 6 62 6 82 30L96 18V42L82 30C62 54 26 54 8 30Z'

/** What no drawing of a kiln shows, drawn small by hand in the same ink. */
const PICTURES = {
  arch: (
    <>
      <path className="k-unit" d="M4 58V34A46 46 0 0 1 96 34V58H80V36A30 30 0 0 0 20 36V58Z" />
      <path className="k-thin" d="M4 46H20M80 46H96M9 17L26 25M32 0L37 13M50 -8V6M68 0L63 13M91 17L74 25" />
    </>
  ),
  fish: (
    <>
      <path className="k-fish" d={FISH} />
      <path className="k-edge" d="M26 20C32 26 32 34 26 40" />
      <circle className="k-solid" cx="18" cy="28" r="2.4" />
    </>
  ),
  dried: (
    <>
      <path className="k-fish" d={FISH} />
      <path className="k-edge" d="M26 20C32 26 32 34 26 40" />
      <path className="k-thin" d="M40 18L36 42M50 15L46 45M60 16L56 44M70 21L67 39" />
    </>
  ),
  staple: <path className="k-outline" d="M34 54V14H66V54M34 54l-4-7M66 54l4-7" />,
  post: (
    <>
      <path className="k-wood" d="M18 24H24V60H18ZM76 24H82V60H76Z" />
      <path className="k-edge" d="M6 26L50 4L94 26" />
    </>
  ),
  rafter: (
    <>
      <path className="k-wood" d="M4 24L50 0L96 24L94 29L50 6L6 29Z" />
      <path className="k-edge" d="M20 22V60M80 22V60" />
    </>
  ),
  purlin: (
    <>
      <path className="k-edge" d="M4 30L50 6L96 30M20 22V60M80 22V60" />
      <path className="k-wood" d="M18 16h7v7h-7zM33 8h7v7h-7zM60 8h7v7h-7zM75 16h7v7h-7z" />
    </>
  ),
  fire: <Fire xU={50} yU={58} heightU={56} />,
} as const

export type SmallPictureName = keyof typeof PICTURES

export const SmallPicture = ({ name }: { readonly name: SmallPictureName }) => (
  <svg className="ink small-picture" viewBox="-2 -10 104 72" aria-hidden="true" focusable="false">
    {PICTURES[name]}
  </svg>
)
