import { codeFetched } from './code-fetched.ts'

/** The documents' code, fetched once. */
export const documents = () => codeFetched(() => import('./documents.ts'))
