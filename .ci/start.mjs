// `npm start`: from a fresh clone to the running app. Installs, builds what changed, serves.
import path from 'node:path'
import { serve } from './serve.mjs'
import { changedMs, checkNode, install, root, run, stop } from './set-up.mjs'

checkNode()
install()

const dist = path.join(root, 'dist')
const sources = ['src', 'public', 'shared', '.ci', 'package-lock.json', 'vite.config.ts'].map((name) =>
  path.join(root, name),
)
if (changedMs(path.join(dist, 'sw.js')) < changedMs(...sources)) {
  console.log('Building …')
  if (!run('npm', ['run', '--silent', 'build'])) stop('The build failed; its message is above.')
}

const port = Number(process.env['PORT'] ?? 4173)
if (!Number.isInteger(port) || port < 1 || port > 65_535)
  stop(`PORT must be a number from 1 to 65535, not ${process.env['PORT']}.`)
try {
  const address = await serve(dist, port, process.env['HOST'] ?? '127.0.0.1')
  console.log(`\nKilnwright is at ${address}\nThe example plan is one tap away, on the front page. Ctrl+C ends.\n`)
} catch (error) {
  stop(`Could not serve: ${String(error)}`)
}
