import type { ReactNode } from 'react'

/** Our own icons: 24 px grid, 2 px strokes, square ends, drawn from the site: trowel, pan, peg, string, board. */
const ICONS = {
  plan: (
    <>
      <path d="M6 19H3V5h18v14h-3M10 19h4M12 19V5" />
    </>
  ),
  buy: (
    <>
      <path d="M2 9h20l-4 9H6zM6 9c0-5 12-5 12 0" />
    </>
  ),
  build: (
    <>
      <path d="M3 21L7 10l7 7zM10.5 13.5L14 10" />
      <path d="M14 10l6-6" strokeWidth="4" />
    </>
  ),
  run: (
    <>
      <path d="M4 3h16M12 7c.5 4 5 5 5 9.5a5 5 0 0 1-10 0c0-2 .9-3 2-4.3.3 1.5 .9 2 1.6 2.3C10.7 12 11 9.5 12 7z" />
    </>
  ),
  back: (
    <>
      <path d="M15 4l-8 8 8 8" />
    </>
  ),
  next: (
    <>
      <path d="M9 4l8 8-8 8" />
    </>
  ),
  close: (
    <>
      <path d="M5 5l14 14M19 5L5 19" />
    </>
  ),
  plus: (
    <>
      <path d="M12 4v16M4 12h16" />
    </>
  ),
  minus: (
    <>
      <path d="M4 12h16" />
    </>
  ),
  tick: (
    <>
      <path d="M4 13l5 5L20 6" />
    </>
  ),
  undo: (
    <>
      <path d="M4 9h10a5 5 0 0 1 0 10H8M8 4L4 9l4 5" />
    </>
  ),
  redo: (
    <>
      <path d="M20 9H10a5 5 0 0 0 0 10h6M16 4l4 5-4 5" />
    </>
  ),
  saved: (
    <>
      <path d="M3 17h18M12 17V4M8 4h8M7 21h10" />
    </>
  ),
  lost: (
    <>
      <path d="M3 17h18M8 17l5-12M10 3l7 3M19 4l3-3" />
    </>
  ),
  share: (
    <>
      <path d="M3 8h10v13H3zM9 8V3h12v13h-8" />
    </>
  ),
  scan: (
    <>
      <path d="M3 8V3h5M16 3h5v5M21 16v5h-5M8 21H3v-5M8 8h3v3H8zM13 13h3v3h-3z" />
    </>
  ),
  file: (
    <>
      <path d="M5 3h9l5 5v13H5zM14 3v5h5" />
    </>
  ),
  print: (
    <>
      <path d="M6 8V3h12v5M6 17H3V8h18v9h-3M6 14h12v7H6z" />
    </>
  ),
  tape: (
    <>
      <path d="M3 4h11v11H3zM14 15h8M18 15v3M22 15v4" />
      <circle cx="8.5" cy="9.5" r="2" />
    </>
  ),
  peg: (
    <>
      <path d="M9 3h6v11l-3 7-3-7zM2 9h7M15 9h7" />
    </>
  ),
  level: (
    <>
      <path d="M2 7h20v10H2zM7 10v4M17 10v4" />
      <circle className="solid" cx="12" cy="12" r="2.4" />
    </>
  ),
  block: (
    <>
      <path d="M2 7h20v11H2z" />
      <path className="solid" d="M5.5 10.5h5v4h-5zM13.5 10.5h5v4h-5z" />
    </>
  ),
  tray: (
    <>
      <path d="M1 7h22M4 7v8M20 7v8M4 15h16M8 7v8M12 7v8M16 7v8" />
    </>
  ),
  coins: (
    <>
      <path d="M3 12h18v9H3zM9 16.5h6M8 12V9a4 4 0 0 1 8 0v3" />
    </>
  ),
  working: (
    <>
      <path d="M3 18h18M6 15l-5 6M23 15l-5 6" transform="translate(0 -1)" />
      <path d="M8 4v8M12 8H4M15 6h5M15 10h5" />
    </>
  ),
  caution: (
    <>
      <path d="M12 3l10 18H2zM12 10v5M12 17v2" />
    </>
  ),
  problem: (
    <>
      <path d="M4 4h16v16H4zM12 8v5M12 15v2" />
    </>
  ),
  ok: (
    <>
      <circle cx="12" cy="12" r="9" />
      <path d="M8 12l3 3 5-6" />
    </>
  ),
  info: (
    <>
      <path d="M12 10v8M12 5v2.5" />
      <circle cx="12" cy="12" r="10" />
    </>
  ),
  sun: (
    <>
      <circle cx="12" cy="12" r="4" />
      <path d="M12 1v4M12 19v4M1 12h4M19 12h4M4 4l3 3M17 17l3 3M20 4l-3 3M7 17l-3 3" />
    </>
  ),
  words: (
    <>
      <path d="M3 4h18v12h-9l-5 5v-5H3zM7 8h10M7 12h6" />
    </>
  ),
  offline: (
    <>
      <path d="M12 21V9M8 21h8M7 12a6 6 0 0 1 1-7M17 12a6 6 0 0 0 1-7M3 3l18 18" />
    </>
  ),
  days: (
    <>
      <path d="M3 6h18v14H3zM3 11h18M8 3v5M16 3v5" />
    </>
  ),
  dig: (
    <>
      <path d="M12 2v12M8 2h8M8 14h8v3c0 2-2 4-4 5-2-1-4-3-4-5z" />
    </>
  ),
  batch: (
    <>
      <path d="M4 8h16v12H4zM1 8h22M8 4v4M16 4v4" />
    </>
  ),
  people: (
    <>
      <path d="M3 21v-6h7v6M14 21v-6h7v6" />
      <circle cx="6.5" cy="8" r="3" />
      <circle cx="17.5" cy="8" r="3" />
    </>
  ),
  more: (
    <>
      <path className="solid" d="M10 3h4v4h-4zM10 10h4v4h-4zM10 17h4v4h-4z" />
    </>
  ),
  pencil: (
    <>
      <path d="M4 20l1-5L16 4l4 4L9 19zM13 7l4 4" />
    </>
  ),
} as const satisfies Record<string, ReactNode>

export type IconName = keyof typeof ICONS

/** One of the site's icons. It never stands alone without a word, except back, close, undo, plus and minus on buttons that carry a label. */
export function Icon({ name }: { readonly name: IconName }) {
  return (
    <svg className="icon" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      {ICONS[name]}
    </svg>
  )
}
