import type { PlanFile } from './plan-file.ts'

/** A plan's copy as a file. */
export const planFileOf = ({ fileName, text }: PlanFile): File =>
  new File([text], fileName, { type: 'application/json' })

/** Puts a file among the phone's downloads. */
export function download(file: File): void {
  const address = URL.createObjectURL(file)
  const link = document.createElement('a')
  link.href = address
  link.download = file.name
  link.click()
  // The download starts after this turn; the address must live until then.
  setTimeout(() => {
    URL.revokeObjectURL(address)
  }, 60_000)
}

/** Whether this phone can hand files to other apps. */
export const canShareFiles = (): boolean => {
  if (typeof navigator.canShare !== 'function') return false
  return navigator.canShare({ files: [planFileOf({ fileName: 'plan.json', text: '{}' })] })
}

/** Hands files to another app of the phone. */
export async function share(files: File[]): Promise<'shared' | 'cancelled' | 'failed'> {
  try {
    await navigator.share({ files })
    return 'shared'
  } catch (error) {
    return error instanceof DOMException && error.name === 'AbortError' ? 'cancelled' : 'failed'
  }
}

/** Hands text to another app where the phone can, else to the clipboard; also where sending was refused, since a list pasted is a list sent. */
export async function shareText(title: string, text: string): Promise<'shared' | 'copied' | 'cancelled' | 'failed'> {
  // Absent in some browsers, whatever the type says.
  if (typeof (navigator as Partial<Pick<Navigator, 'share'>>).share === 'function') {
    try {
      await navigator.share({ title, text })
      return 'shared'
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return 'cancelled'
    }
  }
  try {
    await navigator.clipboard.writeText(text)
    return 'copied'
  } catch {
    return 'failed'
  }
}
