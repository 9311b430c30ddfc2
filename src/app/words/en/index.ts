import { planWords } from './plan-words.ts'
import { shell } from './shell.ts'

/** Every message in English, by its name. Each room of the product keeps its own file. */
export const english = { ...shell, ...planWords }
