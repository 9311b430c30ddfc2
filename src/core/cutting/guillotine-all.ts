import { type Block, singleBlock, sumWithin } from './guillotine-limited.ts'
import { type SheetItem, waysToLie } from './guillotine-table.ts'
import { at } from './vector.ts'

/**
 * Every full choice of items that guillotine cuts get from one sheet, with a way to cut each; no item more often than it is
 * wanted. Blocks are put together in all ways; of two with the same items the one that lies within the other stays.
 * `undefined` when that takes more than `budget` pairs, because then the list is too long.
 */
export function allFullSheets(
  length: number,
  width: number,
  items: readonly (SheetItem & { readonly most: number })[],
  budget: number,
): Block[] | undefined {
  const known = new Map<string, Block[]>()
  const blocks: Block[] = []
  const offer = (block: Block): void => {
    const key = block.counts.join(',')
    const same = known.get(key) ?? []
    if (same.some((b) => b.length <= block.length && b.width <= block.width)) return
    known.set(key, [...same.filter((b) => !(block.length <= b.length && block.width <= b.width)), block])
    blocks.push(block)
  }
  for (const way of waysToLie(items)) {
    if (way.length <= length && way.width <= width && (items[way.item]?.most ?? 0) > 0)
      offer(singleBlock(way, items.length))
  }
  let pairs = 0
  for (let k = 0; k < blocks.length; k++) {
    const block = blocks[k] as Block
    // A block that a smaller one has replaced since is of no more use.
    if (!(known.get(block.counts.join(',')) ?? []).includes(block)) continue
    for (let j = 0; j <= k; j++) {
      if (++pairs > budget) return undefined
      const other = blocks[j] as Block
      const sideBySide = block.length + other.length <= length
      const stacked = block.width + other.width <= width
      if (!sideBySide && !stacked) continue
      const counts = sumWithin(block.counts, other.counts, items)
      if (counts === undefined) continue
      const value = block.value + other.value
      const trees = { first: block.tree, second: other.tree }
      if (sideBySide) {
        offer({
          length: block.length + other.length,
          width: Math.max(block.width, other.width),
          value,
          counts,
          tree: { kind: 'split', across: 'length', ...trees },
        })
      }
      if (stacked) {
        offer({
          length: Math.max(block.length, other.length),
          width: block.width + other.width,
          value,
          counts,
          tree: { kind: 'split', across: 'width', ...trees },
        })
      }
    }
  }
  const choices = [...known.values()].map((same) => same[0] as Block)
  return choices.filter((a) => !choices.some((b) => a !== b && a.counts.every((n, i) => n <= at(b.counts, i))))
}
