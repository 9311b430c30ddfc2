const PAUSES_MS = [200, 600, 1800]

/**
 * Fetches a part of the app's own code, and asks again where that fails: a browser that ends the worker which keeps the files (short of memory, or a tab beside it
 * broke) drops what was just asked of it, and answers the next time.
 */
export async function codeFetched<T>(fetchIt: () => Promise<T>): Promise<T> {
  for (const pauseMs of PAUSES_MS) {
    try {
      return await fetchIt()
    } catch {
      await new Promise((resolve) => {
        setTimeout(resolve, pauseMs)
      })
    }
  }
  return fetchIt()
}
