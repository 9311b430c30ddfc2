/** Whether the browser promised to keep what this app stores, even when the phone runs out of room. */
export type Persistence = 'promised' | 'not-promised' | 'unsupported'

/** Bytes used by this app, and the most that the browser would let it use. Browsers round both, for privacy. */
export interface StorageEstimate {
  readonly usedBytes: number
  readonly quotaBytes: number
}

/** Asks the browser to keep our plans. Call it after the first real work: some browsers ask the user in turn. */
export async function askToPersist(): Promise<Persistence> {
  const storage = storageManager()
  if (storage === undefined) return 'unsupported'
  try {
    const isPromised = (await storage.persisted()) || (await storage.persist())
    return isPromised ? 'promised' : 'not-promised'
  } catch {
    return 'not-promised'
  }
}

/** Whether the browser has promised already; asks nobody. */
export async function isPersistent(): Promise<Persistence> {
  const storage = storageManager()
  if (storage === undefined) return 'unsupported'
  const isPromised = await storage.persisted().catch(() => false)
  return isPromised ? 'promised' : 'not-promised'
}

/** How full the storage is; nothing when the browser does not tell. */
export async function storageEstimate(): Promise<StorageEstimate | undefined> {
  try {
    const { usage, quota } = (await storageManager()?.estimate()) ?? {}
    return usage === undefined || quota === undefined ? undefined : { usedBytes: usage, quotaBytes: quota }
  } catch {
    return undefined
  }
}

/** Absent on pages that are not served securely, whatever the type says. */
function storageManager(): StorageManager | undefined {
  return 'storage' in navigator ? navigator.storage : undefined
}
