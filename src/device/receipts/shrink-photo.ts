import { pictureSize } from './picture-size.ts'
import { MOST_RECEIPT_BYTES, RECEIPT_PX } from './receipt.ts'

export type PhotoProblem = 'too-big' | 'not-a-picture'

/** A file beyond this is no photo of a phone's camera; unpacking it would take the memory that the plan needs. */
const MOST_FILE_BYTES = 60_000_000
const MOST_PIXELS = 120_000_000
const QUALITIES = [0.75, 0.5, 0.3]
/** JPEG has no see-through: what is under it is paper. */
const PAPER = '#fff'

/** A photo as a receipt is kept: upright, no side longer than `RECEIPT_PX`, WebP or JPEG, lighter than `MOST_RECEIPT_BYTES`; what the photo told of place and camera is gone. */
export async function shrunkPhoto(photo: Blob): Promise<Uint8Array | PhotoProblem> {
  if (photo.size > MOST_FILE_BYTES) return 'too-big'
  const size = pictureSize(new Uint8Array(await photo.slice(0, 200_000).arrayBuffer()))
  if (size !== null && size.widthPx * size.heightPx > MOST_PIXELS) return 'too-big'
  const bitmap = await createImageBitmap(photo, { imageOrientation: 'from-image' }).catch(() => null)
  if (bitmap === null) return 'not-a-picture'
  try {
    for (const mostPx of [RECEIPT_PX, RECEIPT_PX * 0.75, RECEIPT_PX * 0.5]) {
      const canvas = scaled(bitmap, mostPx)
      for (const quality of QUALITIES) {
        const made = await encoded(canvas, quality)
        if (made !== null && made.size <= MOST_RECEIPT_BYTES) return new Uint8Array(await made.arrayBuffer())
      }
    }
    return 'too-big'
  } finally {
    bitmap.close()
  }
}

function scaled(bitmap: ImageBitmap, mostPx: number): HTMLCanvasElement {
  const { width, height } = bitmap
  const scale = Math.min(1, mostPx / Math.max(width, height))
  const canvas = document.createElement('canvas')
  canvas.width = Math.max(1, Math.round(width * scale))
  canvas.height = Math.max(1, Math.round(height * scale))
  const pen = canvas.getContext('2d')
  if (pen === null) return canvas
  pen.imageSmoothingQuality = 'high'
  pen.fillStyle = PAPER
  pen.fillRect(0, 0, canvas.width, canvas.height)
  pen.drawImage(bitmap, 0, 0, canvas.width, canvas.height)
  return canvas
}

/** WebP, or JPEG from a browser that writes no WebP. */
async function encoded(canvas: HTMLCanvasElement, quality: number): Promise<Blob | null> {
  const as = (type: string) =>
    new Promise<Blob | null>((resolve) => {
      canvas.toBlob(resolve, type, quality)
    })
  const webp = await as('image/webp')
  return webp?.type === 'image/webp' ? webp : as('image/jpeg')
}
