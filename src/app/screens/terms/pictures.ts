import type { Ink } from '../../../core/documents/drawings/drawing.ts'
import type { ViewKey } from '../../../core/documents/drawings/views.ts'
import type { IconName } from '../../parts/Icon.tsx'
import type { SmallPictureName } from './SmallPictures.tsx'

/** What shows a trade word: a drawing with the thing outlined, a unit of the catalogue, a small picture, or the sign that the app has for it. `nth` is one ring of an ink. */
export type TermPictureOf =
  | { readonly view: ViewKey | 'air' | 'turning'; readonly ink?: Ink; readonly nth?: number }
  | { readonly unit: string }
  | { readonly small: SmallPictureName }
  | { readonly icon: IconName }

const BLOCK = 'hollow-390-140-190'

/** Trade words by what they belong to, in the order in which one meets them, each with its picture. */
export const TERM_GROUPS: Readonly<Record<TermGroup, Readonly<Record<string, TermPictureOf>>>> = {
  walls: {
    kiln: { view: 'inside' },
    chamber: { view: 'plan' },
    opening: { view: 'front', ink: 'hollow' },
    lintel: { view: 'front', ink: 'lintel' },
    arch: { small: 'arch' },
    unit: { unit: BLOCK },
    block: { unit: BLOCK },
    brick: { unit: 'brick-215-102-65' },
    hollow: { view: 'course-3', ink: 'cell' },
    course: { view: 'course-3' },
    joint: { view: 'left' },
    mortar: { icon: 'build' },
    lap: { view: 'back' },
    bond: { view: 'right' },
    divider: { view: 'divider-1' },
    face: { view: 'wall-layers' },
    lining: { view: 'wall-layers', ink: 'hearth', nth: 0 },
    render: { view: 'wall-layers', ink: 'hearth', nth: -1 },
    fill: { view: 'wall-layers', ink: 'fill' },
    hearth: { view: 'section', ink: 'hearth' },
  },
  ground: {
    peg: { view: 'setout-1' },
    string: { view: 'setout-2' },
    diagonal: { view: 'tapes' },
    tape: { icon: 'tape' },
    level: { icon: 'level' },
    trench: { view: 'plan', ink: 'hidden' },
    footing: { view: 'section', ink: 'concrete' },
    concrete: { view: 'section', ink: 'concrete' },
    cement: { icon: 'batch' },
    clay: { icon: 'dig' },
    hardcore: { view: 'section' },
    slab: { view: 'section', ink: 'hearth' },
    apron: { view: 'section' },
    batch: { icon: 'batch' },
    pan: { icon: 'dig' },
  },
  timber: {
    tray: { view: 'tray' },
    rail: { view: 'tray', ink: 'wood-face' },
    batten: { view: 'tray', ink: 'hidden' },
    mesh: { view: 'tray' },
    staple: { small: 'staple' },
    offcut: { view: 'board-1', ink: 'offcut' },
    cover: { view: 'front', ink: 'wood-face' },
    stack: { view: 'front', ink: 'wood-face' },
    post: { small: 'post' },
    rafter: { small: 'rafter' },
    purlin: { small: 'purlin' },
  },
  fish: {
    catch: { small: 'fish' },
    fresh: { small: 'fish' },
    season: { icon: 'days' },
    firing: { small: 'fire' },
    embers: { small: 'fire' },
    draught: { view: 'air' },
    smoke: { view: 'air' },
    monoxide: { icon: 'caution' },
    moisture: { small: 'dried' },
    product: { small: 'dried' },
    lot: { icon: 'buy' },
    offer: { icon: 'coins' },
    waste: { view: 'board-1' },
    breakage: { icon: 'block' },
    budget: { icon: 'coins' },
    contribution: { icon: 'people' },
    payback: { icon: 'coins' },
  },
}

export const TERM_GROUP_KEYS = ['walls', 'ground', 'timber', 'fish'] as const
export type TermGroup = (typeof TERM_GROUP_KEYS)[number]
