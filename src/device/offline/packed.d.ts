/** Made by .ci/packed-plugin.ts: opens a file that the phone keeps deflated. */
declare module '*?packed' {
  export const open: () => Promise<Uint8Array>
}
