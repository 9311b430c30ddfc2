// `npm run audit`: known faults of the packages, where a registry answers; where none does, that is said and nothing fails.
import { spawnSync } from 'node:child_process'
import { root, stop } from './set-up.mjs'

const { stdout } = spawnSync('npm', ['audit', '--json', '--audit-level=high'], { cwd: root, encoding: 'utf8' })

/** @typedef {{ metadata?: { vulnerabilities?: Record<string, number> } }} Answer */

/** @returns {Answer} */
function answer() {
  try {
    return /** @type {Answer} */ (JSON.parse(stdout))
  } catch {
    return {}
  }
}

const found = answer().metadata?.vulnerabilities
if (found === undefined) {
  console.log('No registry answered: the packages were not looked up. Run `npm audit` where there is a network.')
} else {
  const { low = 0, moderate = 0, high = 0, critical = 0 } = found
  console.log(
    `Known faults: ${String(critical)} critical, ${String(high)} high, ${String(moderate)} moderate, ${String(low)} low`,
  )
  if (high + critical > 0) stop('`npm audit` names them.')
}
