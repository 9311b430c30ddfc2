import { Buffer } from 'node:buffer'
import { readFile } from 'node:fs/promises'
import type { BrowserContext, Page } from 'playwright-core'

/** A screen's picture made small: each cell is the mean of so many px across and down. */
const CELL_PX = 4
/** Two cells are alike when no colour of theirs differs by more, of 255. */
const ALIKE = 40
/** Of a hundred cells so many may be strange before a picture counts as another. */
export const STRANGE_PERCENT = 0.5

const base64 = async (file: string) => (await readFile(file)).toString('base64')

/**
 * Gives the pages of this phone the typefaces that the product carries for paper, so that letters have one width on every machine.
 * How they are inked still differs from machine to machine, and goes under in the cells.
 */
export async function useOwnFaces(context: BrowserContext): Promise<void> {
  const faces = await Promise.all(
    [
      ['regular', '100 500'],
      ['bold', '600 900'],
    ].map(async ([name = '', weight = '']) => ({
      weight,
      data: await base64(`src/device/paper/fonts/noto-sans-${name}.ttf`),
    })),
  )
  await context.addInitScript((given) => {
    for (const { weight, data } of given) {
      const bytes = Uint8Array.from(atob(data), (sign) => sign.codePointAt(0) ?? 0)
      document.fonts.add(new FontFace('Pictured', bytes.buffer, { weight }))
    }
    const sheet = new CSSStyleSheet()
    sheet.replaceSync(
      ':root { --face: Pictured !important; --face-draw: Pictured !important; text-rendering: geometricPrecision }',
    )
    document.adoptedStyleSheets.push(sheet)
  }, faces)
}

/** The page as it stands, made small, as a PNG. `laboratory` is an empty page that calculates. */
export async function smallPicture(page: Page, laboratory: Page): Promise<Buffer> {
  await page.evaluate(() => document.fonts.ready.then(() => {}))
  const shot = (await page.screenshot({ animations: 'disabled', caret: 'hide' })).toString('base64')
  const small = await laboratory.evaluate(
    async ({ png, cell }) => {
      const image = await createImageBitmap(await (await fetch(`data:image/png;base64,${png}`)).blob())
      const large = new OffscreenCanvas(image.width, image.height).getContext('2d')
      const [width, height] = [Math.floor(image.width / cell), Math.floor(image.height / cell)]
      const canvas = new OffscreenCanvas(width, height)
      const reduced = canvas.getContext('2d')
      if (large === null || reduced === null) throw new Error('no canvas')
      large.drawImage(image, 0, 0)
      const from = large.getImageData(0, 0, image.width, image.height).data
      const to = reduced.createImageData(width, height)
      for (let y = 0; y < height; y++)
        for (let x = 0; x < width; x++)
          for (let colour = 0; colour < 3; colour++) {
            let sum = 0
            for (let down = 0; down < cell; down++)
              for (let across = 0; across < cell; across++)
                sum += from[((y * cell + down) * image.width + x * cell + across) * 4 + colour] ?? 0
            to.data[(y * width + x) * 4 + colour] = sum / cell ** 2
            to.data[(y * width + x) * 4 + 3] = 255
          }
      reduced.putImageData(to, 0, 0)
      const bytes = new Uint8Array(await (await canvas.convertToBlob()).arrayBuffer())
      return [...bytes]
    },
    { png: shot, cell: CELL_PX },
  )
  return Buffer.from(small)
}

/**
 * How many of a hundred cells of either picture have no like in the other, within one cell of their place: a line that moved by a px is
 * the same line, a line that is gone, new or of another colour is not.
 */
export async function strangeness(one: Buffer, other: Buffer, laboratory: Page): Promise<number> {
  return laboratory.evaluate(
    async ({ pngs, alike }) => {
      const [a, b] = await Promise.all(
        pngs.map(async (png) => {
          const image = await createImageBitmap(await (await fetch(`data:image/png;base64,${png}`)).blob())
          const canvas = new OffscreenCanvas(image.width, image.height).getContext('2d')
          canvas?.drawImage(image, 0, 0)
          return canvas?.getImageData(0, 0, image.width, image.height)
        }),
      )
      if (a === undefined || b === undefined || a.width !== b.width || a.height !== b.height) return 100
      const { width, height } = a
      const isLike = (here: ImageData, at: number, there: ImageData, to: number) =>
        [0, 1, 2].every((colour) => Math.abs((here.data[at + colour] ?? 0) - (there.data[to + colour] ?? 0)) <= alike)
      const strange = (here: ImageData, there: ImageData) => {
        let count = 0
        for (let y = 0; y < height; y++)
          for (let x = 0; x < width; x++) {
            let isFound = false
            for (let v = Math.max(0, y - 1); v <= Math.min(height - 1, y + 1) && !isFound; v++)
              for (let u = Math.max(0, x - 1); u <= Math.min(width - 1, x + 1) && !isFound; u++)
                isFound = isLike(here, (y * width + x) * 4, there, (v * width + u) * 4)
            if (!isFound) count += 1
          }
        return count
      }
      return (100 * Math.max(strange(a, b), strange(b, a))) / (width * height)
    },
    { pngs: [one.toString('base64'), other.toString('base64')], alike: ALIKE },
  )
}
