/** The screens for the work on the site, that open over Build. */
export const SITE_CARDS = ['setout', 'tapes', 'levels', 'course', 'measured', 'batch', 'needed'] as const
export type SiteCard = (typeof SITE_CARDS)[number]

export const isSiteCard = (card: string | null): card is SiteCard => SITE_CARDS.some((one) => one === card)
