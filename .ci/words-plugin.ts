import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { deflateRawSync } from 'node:zlib'
import { compileMessage } from '@lingui/message-utils/compileMessage'
import type { Plugin, ResolvedConfig } from 'vite'
import { keepPacked } from './kept-packed.ts'
import { packedMessages, packedNames, type Compiled } from './pack-messages.ts'

const root = path.resolve(import.meta.dirname, '..')
const wordsDir = path.join(root, 'src/app/words')
const catalogue = /\/src\/app\/words\/[a-z-]+\/[a-z-]+\.json$/
const ASKED = 'virtual:words'

type Messages = Readonly<Record<string, string>>

const languages = readdirSync(wordsDir, { withFileTypes: true }).flatMap((one) => (one.isDirectory() ? [one.name] : []))

/** Every message of a language as written. */
export function messagesOf(language: string): Messages {
  const folder = path.join(wordsDir, language)
  const files = readdirSync(folder).filter((name) => name.endsWith('.json'))
  return Object.assign(
    {},
    ...files.sort().map((name) => JSON.parse(readFileSync(path.join(folder, name), 'utf8')) as Messages),
  ) as Messages
}

/**
 * What the phone keeps: the names of all messages once, and for each language its compiled messages in the order of those names,
 * both deflated. A message that a language lacks stands in English.
 */
export function packWords(english: Messages, own: Messages): Uint8Array {
  const compiled = namesOf(english).map((name) => compileMessage(own[name] ?? english[name] ?? ''))
  return deflateRawSync(packedMessages(compiled as Compiled[]), { level: 9, memLevel: 9 })
}

export const packNames = (english: Messages): Uint8Array =>
  deflateRawSync(packedNames(namesOf(english)), { level: 9, memLevel: 9 })

const namesOf = (english: Messages) => Object.keys(english).sort()

function packedModule(): string {
  const english = messagesOf('en')
  const files = languages.map((one) => [one, keepPacked(one, packWords(english, messagesOf(one)))] as const)
  return [
    `import names from ${JSON.stringify(`${keepPacked('names', packNames(english))}?url&no-inline`)}`,
    ...files.map(([one, file]) => `import ${one} from ${JSON.stringify(`${file}?url&no-inline`)}`),
    `const files = { ${languages.join(', ')} }`,
    `export const readWords = async (language) => {`,
    `  const { unpackWords } = await import(${JSON.stringify(path.join(wordsDir, 'unpack-words.ts'))})`,
    `  return unpackWords(names, files[language])`,
    `}`,
  ].join('\n')
}

function plainModule(): string {
  const all = Object.fromEntries(languages.map((one) => [one, { ...messagesOf('en'), ...messagesOf(one) }]))
  const compiled = Object.fromEntries(
    Object.entries(all).map(([one, messages]) => [
      one,
      Object.fromEntries(Object.entries(messages).map(([name, text]) => [name, compileMessage(text)])),
    ]),
  )
  return `const all = ${JSON.stringify(compiled)}\nexport const readWords = async (language) => all[language]`
}

/** Compiles each ICU message of a catalogue when it is bundled, so that the phone carries no parser, and packs whole languages. */
export function words(): Plugin {
  let config: ResolvedConfig
  return {
    name: 'compile-words',
    enforce: 'pre',
    configResolved(resolved) {
      config = resolved
    },
    resolveId: (id) => (id === ASKED ? `\0${ASKED}` : null),
    load(id) {
      if (id !== `\0${ASKED}`) return null
      return config.command === 'build' ? packedModule() : plainModule()
    },
    transform(code, id) {
      if (!catalogue.test(id)) return null
      const messages = JSON.parse(code) as Messages
      const compiled = Object.fromEntries(Object.entries(messages).map(([key, text]) => [key, compileMessage(text)]))
      return { code: JSON.stringify(compiled), map: null }
    },
  }
}
