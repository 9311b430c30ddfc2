import { encodeQR } from 'qr'

/** Rows of modules, dark ones true, with the quiet zone of four modules that the standard asks for (ISO/IEC 18004). */
export const codeOf = (text: string): readonly (readonly boolean[])[] =>
  encodeQR(text, 'raw', { ecc: 'medium', encoding: 'alphanumeric', border: 4 })

/** Reads a code from a picture; null where there is none. */
export type CodeReader = (picture: ImageData) => Promise<string | null>

interface Detector {
  readonly detect: (picture: ImageData) => Promise<readonly { readonly rawValue: string }[]>
}
type DetectorClass = (new (options: { readonly formats: readonly string[] }) => Detector) & {
  readonly getSupportedFormats: () => Promise<readonly string[]>
}

/** The phone's own reader where it has one, else ours, loaded when first needed. */
export async function codeReader(): Promise<CodeReader> {
  const { BarcodeDetector: Own } = globalThis as { readonly BarcodeDetector?: DetectorClass }
  const formats = (await Own?.getSupportedFormats().catch(() => [])) ?? []
  if (Own !== undefined && formats.includes('qr_code')) {
    const own = new Own({ formats: ['qr_code'] })
    return async (picture) => (await own.detect(picture))[0]?.rawValue ?? null
  }
  const { decodeQR } = await import('qr/decode.js')
  return async (picture) => {
    try {
      return decodeQR(picture)
    } catch {
      return null
    }
  }
}
