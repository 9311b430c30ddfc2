import { createContext } from 'react'
import type { Derived } from '../../core/basics/derived.ts'

/** Opens the working of a figure on a drawing; null where drawings are only looked at, as on paper. */
export const WorkingContext = createContext<((derived: Derived) => void) | null>(null)
