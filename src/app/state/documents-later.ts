/** The documents' code, fetched once. */
export const documents = () => import('./documents.ts')
