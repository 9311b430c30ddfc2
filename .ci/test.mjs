// `npm test`: everything from a fresh clone. Installs, finds a browser, checks, tests; the last line counts the tests.
import { findChromium, howToInstall, installChromium } from './chromium.mjs'
import { checkNode, install, run, stop } from './set-up.mjs'

checkNode()
install()
if (findChromium() === undefined && !installChromium()) stop(howToInstall)

// A failed check does not hide the tests: all run, and the closing line counts it among the failed.
const failedChecks = ['types', 'lint', 'format:check', 'unused'].filter((name) => {
  console.log(`\n— ${name}`)
  return !run('npm', ['run', '--silent', name])
})
if (failedChecks.length > 0) console.error(`\nFailed before the tests: ${failedChecks.join(', ')}`)

const vitest = ['node_modules/vitest/vitest.mjs', 'run', ...process.argv.slice(2)]
const passed = run(process.execPath, vitest, { ...process.env, FAILED_CHECKS: failedChecks.join(',') })
process.exit(passed && failedChecks.length === 0 ? 0 : 1)
