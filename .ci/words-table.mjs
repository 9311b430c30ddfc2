// `npm run words -- fr > fr.csv` writes a language as a table: file, name, English, translation. `npm run words -- fr fr.csv` takes a corrected
// table back into src/app/words/fr. For whoever checks a language and does not write JSON.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import { root, stop } from './set-up.mjs'

const [language = '', table] = process.argv.slice(2)
const folder = path.join(root, 'src/app/words')
const languages = readdirSync(folder, { withFileTypes: true }).flatMap((one) => (one.isDirectory() ? [one.name] : []))
if (!languages.includes(language))
  stop(`Usage: npm run words -- LANGUAGE [corrected.csv], one of ${languages.join(', ')}`)

/** @returns {Record<string, string>} */
const read = (/** @type {string} */ of, /** @type {string} */ file) =>
  /** @type {Record<string, string>} */ (JSON.parse(readFileSync(path.join(folder, of, file), 'utf8')))
const quoted = (/** @type {string} */ text) => `"${text.replaceAll('"', '""')}"`
const files = readdirSync(path.join(folder, 'en')).filter((name) => name.endsWith('.json'))

if (table === undefined) {
  const rows = files.flatMap((file) => {
    const own = read(language, file)
    return Object.entries(read('en', file)).map(([name, english]) => [file, name, english, own[name] ?? ''])
  })
  process.stdout.write(
    [['file', 'name', 'en', language], ...rows].map((row) => row.map(quoted).join(',')).join('\r\n') + '\r\n',
  )
} else {
  const cells = [...readFileSync(table, 'utf8').matchAll(/(?:"((?:[^"]|"")*)"|([^,\r\n]*))(,|\r?\n|$)/g)]
  /** @type {string[][]} */
  const rows = [[]]
  for (const [, inQuotes, bare = '', end] of cells) {
    rows.at(-1)?.push(inQuotes === undefined ? bare : inQuotes.replaceAll('""', '"'))
    if (end !== ',') rows.push([])
  }
  let changed = 0
  for (const file of files) {
    const own = read(language, file)
    for (const [where, name = '', , text = ''] of rows) {
      if (where !== file || text === '' || own[name] === undefined || own[name] === text) continue
      own[name] = text
      changed += 1
    }
    writeFileSync(path.join(folder, language, file), `${JSON.stringify(own, null, 2)}\n`)
  }
  console.log(`${changed} messages changed in src/app/words/${language}; npm test -- --project parts checks them`)
}
