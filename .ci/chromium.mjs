// Finds the browser that the tests drive, and on Debian installs one.
import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import path from 'node:path'

const names = [
  'chromium-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome-stable',
  'google-chrome',
  'microsoft-edge',
]

const elsewhere = [
  '/usr/lib/chromium/chromium-headless-shell',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  ...[process.env['ProgramFiles'], process.env['ProgramFiles(x86)'], process.env['LOCALAPPDATA']]
    .filter((folder) => folder !== undefined)
    .flatMap((folder) => [
      path.join(folder, 'Google/Chrome/Application/chrome.exe'),
      path.join(folder, 'Microsoft/Edge/Application/msedge.exe'),
    ]),
]

/**
 * The path of a Chromium or Chrome: the one named by CHROMIUM, else the first found on the search path, else in the
 * usual places of macOS and Windows.
 * @returns {string | undefined}
 */
export function findChromium() {
  const named = process.env['CHROMIUM']
  if (named !== undefined && named !== '') return existsSync(named) ? named : undefined
  const folders = (process.env['PATH'] ?? '').split(path.delimiter)
  return [...folders.flatMap((folder) => names.map((name) => path.join(folder, name))), ...elsewhere].find(existsSync)
}

/** What to tell someone whose machine has no browser that the tests can drive. */
export const howToInstall = `The tests drive a real Chromium, and none was found${
  process.env['CHROMIUM'] ? ` at CHROMIUM=${process.env['CHROMIUM']}` : ''
}. Install one:
  Debian, Ubuntu   sudo apt-get install chromium-headless-shell fonts-noto-core   (or: chromium)
  Fedora           sudo dnf install chromium google-noto-sans-fonts
  macOS            brew install --cask google-chrome
  Windows          winget install Google.Chrome
or set CHROMIUM to the path of a Chromium or Chrome that is elsewhere.`

/** Installs a Chromium on Debian and its relatives, if we may; true when one can then be found. */
export function installChromium() {
  if (process.env['CHROMIUM'] || !existsSync('/usr/bin/apt-get')) return false
  const isRoot = process.getuid?.() === 0
  const asRoot = isRoot ? [] : ['sudo', '-n']
  if (!isRoot && spawnSync('sudo', ['-n', 'true'], { stdio: 'ignore' }).status !== 0) return false
  console.log('Installing a Chromium for the tests (apt-get) …')
  apt(asRoot, ['update', '-qq'])
  for (const name of ['chromium-headless-shell', 'chromium']) {
    if (apt(asRoot, ['install', '-y', '-qq', '--no-install-recommends', name, 'fonts-noto-core'])) break
  }
  return findChromium() !== undefined
}

/**
 * @param {readonly string[]} asRoot
 * @param {readonly string[]} args
 */
function apt(asRoot, args) {
  const [command = '', ...rest] = [...asRoot, 'env', 'DEBIAN_FRONTEND=noninteractive', 'apt-get', ...args]
  return spawnSync(command, rest, { stdio: ['ignore', 'ignore', 'inherit'] }).status === 0
}
