/**
 * Built files that the worker does not keep, and why: what talks to an office's server is of no use without a network, and comes over it when an
 * office is joined; large icons are asked for once, when a phone puts the app on its home screen, and kept there.
 */
export const NOT_KEPT = /^(assets\/over-network-[\w-]+\.js|icon-(180|512|maskable-512)\.png)$/
