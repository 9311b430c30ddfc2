import { BlockedError, connect, troubleOf } from './connection.ts'
import { databaseShelf } from './database-shelf.ts'
import { memoryShelf } from './memory-shelf.ts'
import type { Shelf } from './shelf.ts'

/** How plans are kept in this tab. 'newer': a newer version of the app has the database; nothing of it is touched. */
export type Storage = 'lasting' | 'memory-only' | 'newer'

const RETRY_MS = 1000
/** Some browsers never answer the first request; then another tab is told of, and asking goes on. */
const PATIENCE_MS = 4000

const wait = (timeMs: number) =>
  new Promise<void>((resolve) => {
    setTimeout(resolve, timeMs)
  })

/** Opens the phone's database, or a shelf in memory where there is none. `onBlocked` is told while another tab is in the way. */
export async function openShelf(onBlocked: () => void): Promise<{ readonly shelf: Shelf; readonly storage: Storage }> {
  if (!hasDatabase()) return { shelf: memoryShelf(), storage: 'memory-only' }
  const connection = connect()
  for (;;) {
    try {
      await Promise.race([
        connection.ask((database) => database.count('plans')),
        wait(PATIENCE_MS).then(() => {
          throw new BlockedError()
        }),
      ])
      return { shelf: databaseShelf(connection), storage: 'lasting' }
    } catch (error) {
      if (!(error instanceof BlockedError))
        return { shelf: memoryShelf(), storage: troubleOf(error) === 'blocked' ? 'newer' : 'memory-only' }
      onBlocked()
      await wait(RETRY_MS)
    }
  }
}

/** Where storage is switched off, some browsers have no database and others throw when it is touched. */
function hasDatabase(): boolean {
  try {
    return typeof indexedDB !== 'undefined'
  } catch {
    return false
  }
}
