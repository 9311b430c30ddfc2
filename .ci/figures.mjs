// Where measured figures stand: tests/bench/figures.md in full, README.md in short. Each command that measures writes its own part of both,
// between two marks, so that one can be run again without the others.
import { readFileSync, writeFileSync } from 'node:fs'
import os from 'node:os'
import path from 'node:path'
import { root, stop } from './set-up.mjs'

/** On what, when, and beside how much other work something was measured. */
export function circumstances() {
  const [cpu] = os.cpus()
  const load = os.loadavg().map((one) => one.toFixed(1))
  return `${new Date().toISOString().slice(0, 10)}, ${cpu?.model.trim() ?? 'unknown processor'}, ${String(os.cpus().length)} cores, Node ${process.version}; load average ${load.join(', ')} over 1, 5 and 15 minutes`
}

/** @param {readonly number[]} values */
export const median = (values) => values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN

/**
 * @param {readonly string[]} head
 * @param {readonly (readonly string[])[]} rows
 */
export const table = (head, rows) =>
  [head, head.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n')

/**
 * Writes what stands between `<!-- name -->` and `<!-- end of name -->`.
 * @param {string} file
 * @param {string} name
 * @param {string} text
 */
export function put(file, name, text) {
  const full = path.join(root, file)
  const [start, end] = [`<!-- ${name} -->`, `<!-- end of ${name} -->`]
  const [head, rest] = readFileSync(full, 'utf8').split(start)
  const tail = rest?.split(end)[1]
  if (head === undefined || tail === undefined) stop(`${file} has lost the marks ${start} and ${end}.`)
  writeFileSync(full, `${head}${start}\n\n${text.trim()}\n\n${end}${tail}`)
}

/** The file that holds all figures. */
export const FIGURES = 'tests/bench/figures.md'
