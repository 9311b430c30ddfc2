/** Can the page ask the phone to leave its screen on? */
const canStayAwake = (): boolean => 'wakeLock' in navigator

/**
 * Leaves the screen on until the returned function is called. The phone takes the lock back whenever the page is out of sight, so it is asked for again
 * when the page comes back; a phone low on power may refuse, and nothing is lost by that.
 */
export function stayAwake(): () => void {
  if (!canStayAwake()) return () => {}
  let lock: WakeLockSentinel | null = null
  let isWanted = true
  const ask = () => {
    if (!isWanted || document.visibilityState !== 'visible') return
    navigator.wakeLock.request('screen').then(
      (given) => {
        lock = given
        if (!isWanted) void given.release()
      },
      () => {},
    )
  }
  document.addEventListener('visibilitychange', ask)
  ask()
  return () => {
    isWanted = false
    document.removeEventListener('visibilitychange', ask)
    void lock?.release()
  }
}
