import { useApp } from '../../state/use-app.ts'
import { todayIso } from '../../words/dates.ts'

/** Who and when, as a tick keeps it: the name of this phone, today. */
export function useTick(): () => { readonly day: string; readonly who: string } {
  const who = useApp((state) => state.phoneName)
  return () => ({ day: todayIso(), who })
}
