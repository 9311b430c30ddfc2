import type { ReactElement } from 'react'
import type { Drawing } from '../../../core/documents/drawings/drawing.ts'
import { paperFor } from '../../drawings/paper.ts'
import type { Writing } from '../../drawings/writing.ts'
import { PaperDrawing } from './PaperDrawing.tsx'

/** The lines of `ink.css` for a file that stands alone, black on white. */
const STYLE = `path,rect,circle{fill:none;stroke:#000;stroke-width:1}
.k-masonry,.k-unit,.k-wood-face,.k-concrete,.k-lintel,.k-fill,.k-hearth,.k-top,.k-face{fill:#fff}
.k-unit-cut,.k-face-shaded,.k-inner-shaded{fill:#e6e6e6}.k-wood,.k-solid,.k-dot,.k-hollow{fill:#000}
.k-hidden,.k-unit-ghost,.k-concrete-hidden{stroke-dasharray:5 3.5;stroke-width:.8}
.k-outline,.k-masonry,.k-ground{stroke-width:2.2}
text{font:600 15px sans-serif}.small{font-size:14px}.tiny{font-size:12.5px}`

/** One drawing as an SVG file in millimetres of the kiln: a program that opens it measures true sizes. */
export function drawingFile(
  name: string,
  drawing: Drawing,
  writing: Writing,
  ink: (drawing: ReactElement) => string,
): File {
  const paper = paperFor(drawing, writing)
  const mm = (units: number) => String(Math.round((units / paper.unitsPerM) * 1000 * 10) / 10)
  const inked = ink(<PaperDrawing drawing={drawing} />)
  const open = `<svg xmlns="http://www.w3.org/2000/svg" width="${mm(paper.widthU)}mm" height="${mm(paper.heightU)}mm"`
  const svg = inked.replace('<svg', open).replace(/(<svg[^>]*>)/, `$1<style>${STYLE}</style>`)
  return new File([`<?xml version="1.0" encoding="UTF-8"?>\n${svg}`], `${name}.svg`, { type: 'image/svg+xml' })
}
