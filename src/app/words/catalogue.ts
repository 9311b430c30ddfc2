import { setupI18n, type Messages } from '@lingui/core'
import type { english } from './en/index.ts'
import { shell } from './en/shell.ts'

/** Names of the messages that the code itself uses; names made from a plan's data go through `sayNamed`. */
export type WordKey = keyof typeof english
export type WordArgs = Readonly<Record<string, string | number>>

const i18n = setupI18n({ locale: 'en', messages: { en: shell } })

/** Adds messages that come with a later part of the app. */
export function addWords(messages: Messages): void {
  i18n.load(i18n.locale, messages)
}

/** Says everything in another language from now on. */
export function speakWith(language: string, messages: Messages): void {
  i18n.loadAndActivate({ locale: language, messages })
}

/** A thin no-break space, which some languages group digits with, is missing in some faces. */
const tidy = (text: string): string => text.replaceAll('\u202f', '\u00a0')

/** A message of the catalogue, with its plural forms and what was put in. */
export const say = (key: WordKey, args?: WordArgs): string => tidy(i18n._(key, args))

export const hasWord = (key: string): boolean => Object.hasOwn(i18n.messages, key)

/** A message whose name is made from data (`soil.` and a soil's key); a plain reading of the name where this version has no words for it. */
export function sayNamed(key: string, args?: WordArgs): string {
  if (hasWord(key)) return tidy(i18n._(key, args))
  const [, ...rest] = key.split('.')
  const plain = (rest.length > 0 ? rest.join(' ') : key).replaceAll('-', ' ')
  return plain.charAt(0).toUpperCase() + plain.slice(1)
}
