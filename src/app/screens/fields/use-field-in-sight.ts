import { useEffect } from 'react'

/** Leads the eye and the focus to the field that the working asked for, once its box is there. */
export function useFieldInSight(field: string | null): void {
  useEffect(() => {
    if (field === null) return
    const box = document.getElementById(field)
    box?.scrollIntoView({ block: 'center' })
    box?.focus()
  }, [field])
}
