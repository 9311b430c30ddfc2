import { useEffect } from 'react'
import { stayAwake } from '../../state/site-actions.ts'

/** The screen stays on while this is on the screen: hands on a site are not free to wake it. */
export function useStayAwake(): void {
  useEffect(() => stayAwake(), [])
}
