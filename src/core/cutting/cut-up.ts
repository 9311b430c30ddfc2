import { type CutTree, type SheetItem } from './guillotine-table.ts'
import { type CutUp, type PlacedPart, type PlacedPiece, type SheetCut } from './sheet-job.ts'
import { FIT_TICKS, toMetres } from './ticks.ts'

interface Part {
  readonly name: string
  readonly x: number
  readonly y: number
  readonly length: number
  readonly width: number
}

/**
 * Turns a cut tree into cuts in order with running marks, and the places of pieces and offcuts. `items` have a kerf added
 * to both sides; `length` and `width` are the sheet's own, in ticks. `label` gives the labels of the next copy of an item.
 */
export function cutUp(
  tree: CutTree,
  items: readonly SheetItem[],
  length: number,
  width: number,
  kerf: number,
  label: (item: number) => { readonly piece: number; readonly labels: readonly string[] },
): CutUp {
  const cuts: SheetCut[] = []
  const pieces: PlacedPiece[] = []
  const offcuts: PlacedPart[] = []
  let kerfArea = 0

  const place = (part: Part): PlacedPart => ({
    part: part.name,
    xM: toMetres(part.x),
    yM: toMetres(part.y),
    lengthM: toMetres(part.length),
    widthM: toMetres(part.width),
  })
  /** Cuts a part at the far end of each extent in turn; gives the parts, and sets the last bit aside as an offcut. */
  const cutAlong = (part: Part, along: 'length' | 'width', extents: readonly number[]): Part[] => {
    const whole = part[along]
    const marks: number[] = []
    const parts: Part[] = []
    let from = 0
    const piece = (size: number): Part => {
      const name = `${part.name === '' ? '' : `${part.name}.`}${parts.length + 1}`
      return along === 'length'
        ? { name, x: part.x + from, y: part.y, length: size, width: part.width }
        : { name, x: part.x, y: part.y + from, length: part.length, width: size }
    }
    for (const extent of extents) {
      const size = extent > whole - from - FIT_TICKS ? whole - from : extent
      parts.push(piece(size))
      from += size
      if (from >= whole) break
      marks.push(toMetres(from))
      const taken = Math.min(kerf, whole - from)
      kerfArea += taken * (along === 'length' ? part.width : part.length)
      from += taken
    }
    if (whole > from) offcuts.push(place(piece(whole - from)))
    if (marks.length > 0) {
      cuts.push({
        part: part.name,
        lengthM: toMetres(part.length),
        widthM: toMetres(part.width),
        along,
        marksM: marks,
      })
    }
    return marks.length > 0 ? parts : [part]
  }
  const cut = (node: CutTree, part: Part): void => {
    if (node.kind === 'nothing') {
      offcuts.push(place(part))
      return
    }
    if (node.kind === 'split') {
      const children = inOneDirection(node, node.across)
      const parts = cutAlong(
        part,
        node.across,
        children.map((child) => extent(child, items, node.across) - kerf),
      )
      children.forEach((child, k) => {
        const own = parts[k]
        if (own !== undefined) cut(child, own)
      })
      return
    }
    const [ownLength, ownWidth] = sides(node, items)
    const [strip = part] = cutAlong(part, 'length', [ownLength - kerf])
    const [own = strip] = cutAlong(strip, 'width', [ownWidth - kerf])
    pieces.push({ ...place(own), turned: node.turned, ...label(node.item) })
  }
  cut(tree, { name: '', x: 0, y: 0, length, width })
  return { cuts, pieces, offcuts, kerfM2: toMetres(toMetres(kerfArea)) }
}

/** Neighbours cut from the same part by cuts of one direction; what is left uncut is not a neighbour. */
function inOneDirection(node: CutTree, across: 'length' | 'width'): CutTree[] {
  if (node.kind === 'nothing') return []
  if (node.kind !== 'split' || node.across !== across) return [node]
  return [...inOneDirection(node.first, across), ...inOneDirection(node.second, across)]
}

function sides(
  node: { readonly item: number; readonly turned: boolean },
  items: readonly SheetItem[],
): [number, number] {
  const item = items[node.item]
  if (item === undefined) return [0, 0]
  return node.turned ? [item.width, item.length] : [item.length, item.width]
}

/** How far a cut tree reaches in one direction, kerf included. */
export function extent(node: CutTree, items: readonly SheetItem[], along: 'length' | 'width'): number {
  if (node.kind === 'nothing') return 0
  if (node.kind === 'item') return sides(node, items)[along === 'length' ? 0 : 1]
  const first = extent(node.first, items, along)
  const second = extent(node.second, items, along)
  return node.across === along ? first + second : Math.max(first, second)
}
