const CHANNEL = 'kilnwright-update'

/** A tab that is asleep cannot answer; it cannot be in the middle of a save either, and its own guard remains. */
const ANSWER_MS = 300

/** Tells other tabs, when they ask, whether this one may be reloaded. Silence means yes. */
export function answerOtherTabs(isSafeToReload: () => boolean): void {
  const channel = new BroadcastChannel(CHANNEL)
  channel.addEventListener('message', (event: MessageEvent<unknown>) => {
    if (event.data === 'may you reload?' && !isSafeToReload()) channel.postMessage('not now')
  })
}

/** True unless another tab says that it has unsaved work. */
export function askOtherTabs(): Promise<boolean> {
  return new Promise((resolve) => {
    const channel = new BroadcastChannel(CHANNEL)
    const answer = (isSafe: boolean) => {
      clearTimeout(timer)
      channel.close()
      resolve(isSafe)
    }
    const timer = setTimeout(answer, ANSWER_MS, true)
    channel.addEventListener('message', (event: MessageEvent<unknown>) => {
      if (event.data === 'not now') answer(false)
    })
    channel.postMessage('may you reload?')
  })
}
