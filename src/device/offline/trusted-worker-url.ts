/** The page's policy lets scripts be named by this one Trusted Types policy only; see the meta tag in `src/index.html`. */
const POLICY = 'kilnwright-worker'

interface Policy {
  createScriptURL(url: string): string
}

/** What browsers with Trusted Types offer; those without take the plain string. */
interface TrustedTypesWindow {
  readonly trustedTypes?: {
    createPolicy(name: string, rules: { createScriptURL(url: string): string }): Policy
  }
}

let policy: Policy | undefined

/** Only `sw.js` beside the page, and scripts of the build below it, can pass. */
function checked(asked: string): string {
  const { href } = new URL(asked, document.baseURI)
  const isOurs =
    href === new URL('sw.js', document.baseURI).href ||
    (href.startsWith(new URL('assets/', document.baseURI).href) && href.endsWith('.js'))
  if (!isOurs) throw new TypeError(`not our worker: ${asked}`)
  return asked
}

/** A worker's address in the form that the page's policy accepts. */
export function trustedWorkerUrl(url: string): string {
  const { trustedTypes } = window as TrustedTypesWindow
  if (trustedTypes === undefined) return checked(url)
  policy ??= trustedTypes.createPolicy(POLICY, { createScriptURL: checked })
  return policy.createScriptURL(url)
}
