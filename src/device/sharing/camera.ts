/** Why no picture comes from a camera: its owner said no, the phone has none, another app has it, or the page may not ask. */
export type CameraProblem = 'refused' | 'none' | 'busy' | 'not-offered'

const PROBLEMS: Readonly<Record<string, CameraProblem>> = {
  NotAllowedError: 'refused',
  SecurityError: 'refused',
  NotFoundError: 'none',
  OverconstrainedError: 'none',
  NotReadableError: 'busy',
  AbortError: 'busy',
}

/** The camera that looks away from whoever holds the phone, where there are two. */
export async function openCamera(): Promise<MediaStream | CameraProblem> {
  // Absent on pages that are not served securely, whatever the type says.
  const { mediaDevices } = navigator as { readonly mediaDevices?: MediaDevices }
  if (mediaDevices === undefined) return 'not-offered'
  try {
    return await mediaDevices.getUserMedia({ video: { facingMode: 'environment', width: { ideal: 1280 } } })
  } catch (error) {
    return PROBLEMS[error instanceof DOMException ? error.name : ''] ?? 'none'
  }
}

export function closeCamera(stream: MediaStream): void {
  for (const track of stream.getTracks()) track.stop()
}

let canvas: HTMLCanvasElement | undefined

/** A picture as pixels, no side longer than `mostPx`; null while there is nothing in it yet. */
export function pixelsOf(
  source: CanvasImageSource,
  widthPx: number,
  heightPx: number,
  mostPx: number,
): ImageData | null {
  if (widthPx === 0 || heightPx === 0) return null
  const scale = Math.min(1, mostPx / Math.max(widthPx, heightPx))
  canvas ??= document.createElement('canvas')
  canvas.width = Math.round(widthPx * scale)
  canvas.height = Math.round(heightPx * scale)
  const pen = canvas.getContext('2d', { willReadFrequently: true })
  if (pen === null) return null
  pen.drawImage(source, 0, 0, canvas.width, canvas.height)
  return pen.getImageData(0, 0, canvas.width, canvas.height)
}

/** Sizes at which a photo is looked at: the reader finds large codes in a small picture and small ones in a large. */
const PHOTO_SIZES_PX = [900, 1600, 500]

/** What a picture file shows, at several sizes, largest detail not always first; nothing where it is no picture. */
export async function* pixelsOfPhoto(file: Blob): AsyncGenerator<ImageData> {
  const bitmap = await createImageBitmap(file).catch(() => null)
  if (bitmap === null) return
  try {
    for (const mostPx of PHOTO_SIZES_PX) {
      const pixels = pixelsOf(bitmap, bitmap.width, bitmap.height, mostPx)
      if (pixels !== null) yield pixels
    }
  } finally {
    bitmap.close()
  }
}
