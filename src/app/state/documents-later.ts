/** The documents' code, fetched once. */
export const documents = (): Promise<typeof import('./documents.ts')> => import('./documents.ts')
