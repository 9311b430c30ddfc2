/** The page's policy lets scripts be named by this one Trusted Types policy only; see the meta tag in `src/index.html`. */
const POLICY = 'kilnwright-worker'

/** What browsers with Trusted Types offer; those without take the plain string. */
interface TrustedTypesWindow {
  readonly trustedTypes?: {
    createPolicy(
      name: string,
      rules: { createScriptURL(url: string): string },
    ): { createScriptURL(url: string): string }
  }
}

/** The worker's address in the form that the page's policy accepts. Only `sw.js` beside the page can pass. */
export function trustedWorkerUrl(url: string): string {
  const { trustedTypes } = window as TrustedTypesWindow
  if (trustedTypes === undefined) return url
  const policy = trustedTypes.createPolicy(POLICY, {
    createScriptURL: (asked) => {
      if (new URL(asked, document.baseURI).href !== new URL('sw.js', document.baseURI).href) {
        throw new TypeError(`not our worker: ${asked}`)
      }
      return asked
    },
  })
  return policy.createScriptURL(url)
}
