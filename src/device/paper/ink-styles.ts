/** How each line and fill of the drawings looks in black on white paper; millimetres of line, as fine as a printer of dots can hold. */
export interface PaperInk {
  readonly line?: number
  readonly dash?: readonly [number, number]
  readonly fill?: 'white' | 'black' | 'grey'
  readonly pattern?: 'hatch' | 'wide-hatch' | 'stones' | 'dots' | 'earth'
}

const CUT = 0.5
const EDGE = 0.3
const THIN = 0.15
const HIDDEN = [1.2, 0.8] as const

const STYLES: Readonly<Record<string, PaperInk>> = {
  'k-outline': { line: CUT },
  'k-edge': { line: EDGE },
  'k-thin': { line: THIN },
  'k-hidden': { line: THIN, dash: HIDDEN },
  'k-extension': { line: THIN },
  'k-masonry': { line: CUT, fill: 'white', pattern: 'hatch' },
  'k-concrete': { line: EDGE, fill: 'white', pattern: 'stones' },
  'k-lintel': { line: EDGE, fill: 'white', pattern: 'stones' },
  'k-lintel-veil': { line: EDGE, fill: 'white', pattern: 'stones' },
  'k-concrete-hidden': { line: THIN, dash: HIDDEN, fill: 'white', pattern: 'stones' },
  'k-earth': { pattern: 'earth' },
  'k-fill': { line: THIN, fill: 'white', pattern: 'dots' },
  'k-hearth': { line: THIN, fill: 'white', pattern: 'dots' },
  'k-wood': { line: THIN, fill: 'black' },
  'k-wood-face': { line: EDGE, fill: 'white' },
  'k-mesh': { line: THIN },
  'k-mesh-cut': { line: CUT, dash: [0.6, 0.6] },
  'k-fish': { line: THIN },
  'k-unit': { line: EDGE, fill: 'white' },
  'k-unit-cut': { line: EDGE, fill: 'grey' },
  'k-unit-ghost': { line: THIN, dash: HIDDEN },
  'k-unit-next': { line: EDGE, fill: 'white' },
  'k-unit-laid': { line: EDGE, fill: 'white' },
  'k-unit-chosen': { line: CUT },
  'k-cell': { line: THIN },
  'k-hollow': { line: EDGE, fill: 'white' },
  'k-offcut': { line: THIN, fill: 'white', pattern: 'wide-hatch' },
  'k-ground': { line: CUT },
  'k-string': { line: THIN },
  'k-diagonal': { line: CUT },
  'k-board': { line: 0.9 },
  'k-veil': { line: EDGE },
  'k-veil-shaded': { line: EDGE },
  'k-inner': { line: THIN, fill: 'white' },
  'k-inner-shaded': { line: THIN, fill: 'grey' },
  'k-shade': { fill: 'grey' },
  'k-face': { line: THIN, fill: 'white' },
  'k-face-shaded': { line: THIN, fill: 'grey' },
  'k-top': { line: EDGE, fill: 'white' },
  'k-steel': { line: CUT },
  'k-dim': { line: 0.2 },
  'k-tick': { line: CUT },
  'k-solid': { fill: 'black' },
  'k-arrow': { line: CUT },
  'k-peg': { line: EDGE, fill: 'white' },
  'k-flame': { line: EDGE, fill: 'white' },
  'k-flame-core': {},
  'k-flag-problem': { line: EDGE, fill: 'black' },
  'k-flag-caution': { line: EDGE, fill: 'white' },
  'k-flag-good': { line: EDGE, fill: 'white' },
  'chart-rain': { pattern: 'dots' },
  'chart-fire': { line: EDGE, fill: 'white', pattern: 'hatch' },
  'k-hatch': { line: THIN },
  'k-dot': { fill: 'black' },
}

/** A line whose class is not known is inked as a seen edge, so that nothing of a drawing is ever lost on paper. */
export function paperInk(classes: readonly string[]): PaperInk {
  if (classes.includes('k-peg') && classes.includes('driven')) return { line: EDGE, fill: 'black' }
  for (const one of classes) {
    const style = STYLES[one]
    if (style !== undefined) return style
  }
  return { line: EDGE }
}

/** Height of a text in the drawing's own units, and whether it is heavy, by its classes in `ink.css`. */
export function paperText(classes: readonly string[]): {
  readonly height: number
  readonly bold: boolean
  readonly white: boolean
} {
  const is = (name: string) => classes.includes(name)
  const height = is('tiny') ? 12.5 : is('small') ? 14 : is('big') ? 18 : is('order') ? 16 : is('flag') ? 13 : 15
  return { height, bold: is('big') || is('order') || is('flag'), white: is('flag') && is('problem') }
}
