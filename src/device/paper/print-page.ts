const PATIENCE_MS = 1500

/** Asks for the print window; false where the browser has none, or nothing has begun to print after a while: windows inside other apps keep it shut. */
export async function printPage(): Promise<boolean> {
  // Absent in some browsers, whatever the type says.
  if (typeof (window as Partial<Pick<Window, 'print'>>).print !== 'function') return false
  const began = new Promise<boolean>((resolve) => {
    const hear = () => {
      resolve(true)
    }
    window.addEventListener('beforeprint', hear, { once: true })
    setTimeout(() => {
      window.removeEventListener('beforeprint', hear)
      resolve(false)
    }, PATIENCE_MS)
  })
  try {
    window.print()
  } catch {
    return false
  }
  return began
}
