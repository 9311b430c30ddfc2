import type { PlanFile } from './plan-file.ts'

const fileOf = ({ fileName, text }: PlanFile): File => new File([text], fileName, { type: 'application/json' })

/** Puts a file among the phone's downloads. */
export function download(planFile: PlanFile): void {
  const address = URL.createObjectURL(fileOf(planFile))
  const link = document.createElement('a')
  link.href = address
  link.download = planFile.fileName
  link.click()
  // The download starts after this turn; the address must live until then.
  setTimeout(() => {
    URL.revokeObjectURL(address)
  }, 60_000)
}

/** Whether this phone can hand files to other apps. */
export const canShareFiles = (): boolean => {
  if (typeof navigator.canShare !== 'function') return false
  return navigator.canShare({ files: [fileOf({ fileName: 'plan.json', text: '{}' })] })
}

/** Hands a file to another app of the phone. */
export async function share(planFile: PlanFile): Promise<'shared' | 'cancelled' | 'failed'> {
  try {
    await navigator.share({ files: [fileOf(planFile)] })
    return 'shared'
  } catch (error) {
    return error instanceof DOMException && error.name === 'AbortError' ? 'cancelled' : 'failed'
  }
}
