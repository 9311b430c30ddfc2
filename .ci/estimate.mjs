// `npm run estimate -- plan.json … [--json | --csv | --pdf FILE [--a5] | --bulk]`: the app's own core and sheets for an office, in Node.
// Exit codes: 0 all well, 1 wrong words on the command line, 2 a file could not be read or written, 3 a file is no plan that this version can use.
import { readFileSync, statSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import { createServer } from 'vite'
import { checkNode, root } from './set-up.mjs'

const MOST_BYTES = 5_000_000
const USAGE = `Usage: npm run estimate -- plan.json [more.json …] [--json | --csv | --pdf FILE [--a5] | --bulk]
  no flag   the materials list as text        --json  all results as data
  --csv     the list as separated values      --pdf   all sheets, one plan a file, on A4 or with --a5 on A5
  --bulk    one order for all plans together, as separated values`

/** @param {number} code @param {string} message @returns {never} */
function leave(code, message) {
  process.stderr.write(`${message}\n`)
  process.exit(code)
}

checkNode()
const isSmall = process.argv.includes('--a5')
const words = process.argv.slice(2).filter((word) => word !== '--a5')
const flags = words.filter((word) => word.startsWith('--'))
const pdfAt = words.indexOf('--pdf')
const pdfName = pdfAt < 0 ? undefined : words[pdfAt + 1]
const files = words.filter((word, index) => !word.startsWith('--') && index !== pdfAt + (pdfAt < 0 ? 0 : 1))
const known = new Set(['--json', '--csv', '--pdf', '--bulk'])
if (files.length === 0 || flags.some((flag) => !known.has(flag)) || flags.length > 1) leave(1, USAGE)
if (pdfAt >= 0 && (pdfName === undefined || pdfName.startsWith('--') || files.length !== 1)) leave(1, USAGE)
if (isSmall && pdfAt < 0) leave(1, USAGE)

/** @param {import('../src/core/plan/parse-plan.ts').PlanProblem} problem */
function told(problem) {
  switch (problem.kind) {
    case 'not-a-plan':
      return 'it holds no kiln plan'
    case 'newer':
      return `it is of plan version ${problem.theirVersion}, and this one reads up to ${problem.ourVersion}`
    case 'damaged':
      return `${problem.field} (${problem.reason})`
    default:
      return 'it cannot be read'
  }
}

const vite = await createServer({
  configFile: path.join(root, 'vite.config.ts'),
  server: { middlewareMode: true, hmr: false, watch: null, ws: false },
  ssr: { external: ['react', 'react-dom', 'react/jsx-runtime', 'react/jsx-dev-runtime'] },
  appType: 'custom',
  logLevel: 'error',
  optimizeDeps: { noDiscovery: true },
})
const office = /** @type {typeof import('../src/app/screens/sheets/office.tsx')} */ (
  /** @type {unknown} */ (await vite.ssrLoadModule('/app/screens/sheets/office.tsx'))
)
const paper = /** @type {typeof import('../src/device/paper/pdf.ts')} */ (
  /** @type {unknown} */ (await vite.ssrLoadModule('/device/paper/pdf.ts'))
)

/** @type {import('../src/app/screens/sheets/office.tsx').OfficePlan[]} */
const plans = []
let code = 0
for (const file of files) {
  let text = ''
  try {
    if (statSync(file).size > MOST_BYTES) throw new Error(`larger than ${MOST_BYTES} bytes`)
    text = readFileSync(file, 'utf8')
  } catch (error) {
    process.stderr.write(`${file}: cannot be read: ${error instanceof Error ? error.message : String(error)}\n`)
    code = Math.max(code, 2)
    continue
  }
  /** @type {unknown} */
  let raw
  try {
    raw = JSON.parse(text)
  } catch {
    process.stderr.write(`${file}: not a plan: no JSON\n`)
    code = 3
    continue
  }
  const plan = office.officePlan(raw)
  if ('problems' in plan) {
    process.stderr.write(`${file}: not a plan that this version can use: ${plan.problems.map(told).join(', ')}\n`)
    code = 3
    continue
  }
  plans.push(plan)
}

const today = new Date()
const out = []
const [flag] = flags
if (flag === '--bulk' && plans.length > 0) out.push(office.officeBulk(plans))
else
  for (const plan of plans) {
    if (flag === '--json') out.push(`${JSON.stringify(plan.json(), null, 2)}\n`)
    else if (flag === '--csv') out.push(plan.csv())
    else if (flag === '--pdf' && pdfName !== undefined) {
      const { sheets, head } = office.officeSheets(plan, today.toISOString().slice(0, 10))
      const face = (/** @type {string} */ name) =>
        new Uint8Array(readFileSync(path.join(root, `src/device/paper/fonts/noto-sans-${name}.ttf`)))
      const bytes = await paper.makePdf(sheets, head, isSmall ? 'a5' : 'a4', {
        regular: face('regular'),
        bold: face('bold'),
      })
      try {
        if (bytes !== null) writeFileSync(pdfName, bytes)
        out.push(`${pdfName}\n`)
      } catch (error) {
        process.stderr.write(
          `${pdfName}: cannot be written: ${error instanceof Error ? error.message : String(error)}\n`,
        )
        code = 2
      }
    } else out.push(`${plan.text(today.getTime())}\n`)
  }
await vite.close()
process.stdout.write(out.join('\n'), () => process.exit(code))
