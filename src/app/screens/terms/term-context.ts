import { createContext } from 'react'

/** Opens the meaning of a trade word over whatever is on the screen; null where nothing listens. */
export const TermContext = createContext<((key: string) => void) | null>(null)
