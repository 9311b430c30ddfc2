/** What to mind every time, on the screen and on the sheet beside the kiln. */
export const CAUTIONS = ['air', 'burns', 'lift', 'wood', 'store', 'food', 'pah', 'local'] as const
