// Shared by start.mjs and test.mjs. Plain JavaScript that needs nothing installed: it is what installs.
import { spawnSync } from 'node:child_process'
import { existsSync, readdirSync, statSync } from 'node:fs'
import path from 'node:path'

/** Where the project lies, wherever the command was given. */
export const root = path.resolve(import.meta.dirname, '..')

/** Stops with a clear message when Node is older than the tools can use. */
export function checkNode() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number)
  if (major > 20 || (major === 20 && minor >= 19)) return
  stop(`Kilnwright needs Node 20.19 or newer; this is ${process.versions.node}. Get it from https://nodejs.org.`)
}

/** Installs the exact packages of the lock file, unless that was done since it last changed. */
export function install() {
  const done = changedMs(path.join(root, 'node_modules/.package-lock.json'))
  if (done >= changedMs(path.join(root, 'package-lock.json'))) return
  console.log('Installing packages (npm ci) …')
  if (!run('npm', ['ci', '--no-audit', '--no-fund'])) stop('npm ci failed. The first install needs a network.')
}

/**
 * Runs a command in the project, its output shown; true when it succeeds.
 * @param {string} command
 * @param {readonly string[]} args
 * @param {NodeJS.ProcessEnv} [env]
 */
export function run(command, args, env = process.env) {
  // On Windows npm is a script, which only a shell can start.
  const shell = process.platform === 'win32' && command === 'npm'
  return spawnSync(command, args, { cwd: root, env, shell, stdio: ['ignore', 'inherit', 'inherit'] }).status === 0
}

/**
 * When the newest of these files, or of the files in these folders, changed, ms; 0 when there is none.
 * @param {...string} names
 * @returns {number}
 */
export function changedMs(...names) {
  const times = names.map((name) => {
    if (!existsSync(name)) return 0
    const stat = statSync(name)
    return stat.isDirectory() ? changedMs(...readdirSync(name).map((child) => path.join(name, child))) : stat.mtimeMs
  })
  return Math.max(0, ...times)
}

/**
 * Ends the program with a message for the person at the keyboard.
 * @param {string} message
 * @returns {never}
 */
export function stop(message) {
  console.error(`\n${message}\n`)
  process.exit(1)
}
