/** Made by .ci/worker-chunk-plugin.ts: the address of a module worker that shares its code with the page. */
declare module '*?chunk' {
  export const address: string
}
