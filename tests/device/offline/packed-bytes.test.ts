import { deflateRawSync } from 'node:zlib'
import { afterEach, expect, it, vi } from 'vitest'
import { packedBytes } from '../../../src/device/offline/packed-bytes.ts'

afterEach(() => {
  vi.unstubAllGlobals()
})

it('opens what another deflater packed', async () => {
  const bytes = Uint8Array.from({ length: 5000 }, (_, at) => (at * at) % 251)
  vi.stubGlobal('fetch', () => Promise.resolve(new Response(new Uint8Array(deflateRawSync(bytes)))))
  expect(await packedBytes('face.bin')).toEqual(bytes)
})

it('says which file is not there', async () => {
  vi.stubGlobal('fetch', () => Promise.resolve(new Response('', { status: 404 })))
  await expect(packedBytes('face.bin')).rejects.toThrow('face.bin: 404')
})
