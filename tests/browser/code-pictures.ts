import { writeFile } from 'node:fs/promises'
import type { Page } from 'playwright-core'

/** A picture in greys, one byte a pixel, row by row. */
export interface GreyPicture {
  readonly width: number
  readonly height: number
  readonly grey: Uint8Array
}

/** What stands on the screen where the code is, as a camera would meet it: real pixels of the real page. */
export async function photographed(page: Page): Promise<GreyPicture & { readonly png: Buffer }> {
  const png = await page.locator('.code').screenshot()
  const { width, height, text } = await page.evaluate(async (base64) => {
    const bytes = Uint8Array.from(atob(base64), (char) => char.charCodeAt(0))
    const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }))
    const canvas = new OffscreenCanvas(bitmap.width, bitmap.height)
    const pen = canvas.getContext('2d')
    pen?.drawImage(bitmap, 0, 0)
    const pixels = pen?.getImageData(0, 0, bitmap.width, bitmap.height).data ?? new Uint8ClampedArray()
    let grey = ''
    for (let at = 0; at < pixels.length; at += 4) grey += String.fromCharCode(pixels[at + 1] ?? 0)
    return { width: bitmap.width, height: bitmap.height, text: btoa(grey) }
  }, png.toString('base64'))
  return { png, width, height, grey: new Uint8Array(Buffer.from(text, 'base64')) }
}

export interface Wear {
  /** Turned by, radians. */
  readonly tilt: number
  /** Times as large as it was: less than 1 is farther away. */
  readonly scale: number
  /** Half the side of the square over which the lens smears. */
  readonly blurPx: number
  /** Most that a pixel is too light or too dark, of 255. */
  readonly noise: number
}

/** MINSTD (Park and Miller, Commun. ACM 31(10), 1988): luck that comes again. */
export function luckFrom(seed: number): () => number {
  let state = seed
  return () => {
    state = (state * 48_271) % (2 ** 31 - 1)
    return state / (2 ** 31 - 1)
  }
}

/** The picture as a poor camera sees it: farther away, turned, smeared, full of noise, on a grey table. */
export function worn(picture: GreyPicture, width: number, height: number, wear: Wear, luck: () => number): GreyPicture {
  const { tilt, scale, blurPx, noise } = wear
  const [cos, sin] = [Math.cos(tilt) / scale, Math.sin(tilt) / scale]
  const seen = new Float32Array(width * height)
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const [fromX, fromY] = [x - width / 2, y - height / 2]
      const u = fromX * cos + fromY * sin + picture.width / 2
      const v = fromY * cos - fromX * sin + picture.height / 2
      const isIn = u >= 0 && v >= 0 && u < picture.width && v < picture.height
      seen[y * width + x] = isIn ? 25 + 0.8 * (picture.grey[Math.floor(v) * picture.width + Math.floor(u)] ?? 0) : 150
    }
  const grey = new Uint8Array(width * height)
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      let [sum, count] = [0, 0]
      for (let dy = -blurPx; dy <= blurPx; dy++)
        for (let dx = -blurPx; dx <= blurPx; dx++) {
          const [atX, atY] = [x + dx, y + dy]
          if (atX < 0 || atY < 0 || atX >= width || atY >= height) continue
          sum += seen[atY * width + atX] ?? 0
          count++
        }
      grey[y * width + x] = Math.max(0, Math.min(255, sum / count + (luck() * 2 - 1) * noise))
    }
  return { width, height, grey }
}

/** The picture with three colours and an alpha, as decoders take it. */
export function asImageData({ width, height, grey }: GreyPicture): ImageData {
  const data = new Uint8ClampedArray(width * height * 4)
  grey.forEach((level, at) => {
    data.set([level, level, level, 255], at * 4)
  })
  return { width, height, data, colorSpace: 'srgb' } as ImageData
}

/** A film for Chromium's pretended camera (YUV4MPEG2), ten pictures a second, all of one size. */
export async function writeFilm(file: string, pictures: readonly GreyPicture[]): Promise<void> {
  const [first] = pictures
  if (first === undefined) throw new Error('no pictures')
  const colour = Buffer.alloc((first.width * first.height) / 2, 128)
  const head = `YUV4MPEG2 W${String(first.width)} H${String(first.height)} F10:1 Ip A1:1 C420jpeg\n`
  const frames = pictures.flatMap(({ grey }) => [Buffer.from('FRAME\n'), Buffer.from(grey), colour])
  await writeFile(file, Buffer.concat([Buffer.from(head), ...frames]))
}
