/** Why text is no address of an office: not one at all, or one whose way others could read. */
export type AddressProblem = 'not-an-address' | 'not-secure'

const OWN_MACHINE = new Set(['localhost', '127.0.0.1', '[::1]'])

/** The address of an office's server: secured (wss:), or on this very machine; what was typed without a beginning gets the secured one. */
export function officeUrl(typed: string): URL | AddressProblem {
  const text = typed.trim()
  let url: URL
  try {
    url = new URL(/^[a-z]+:\/\//i.test(text) ? text : `wss://${text}`)
  } catch {
    return 'not-an-address'
  }
  if (url.protocol === 'https:') url.protocol = 'wss:'
  if (url.hostname === '' || url.username !== '' || !['ws:', 'wss:'].includes(url.protocol)) return 'not-an-address'
  return url.protocol === 'wss:' || OWN_MACHINE.has(url.hostname) ? url : 'not-secure'
}
