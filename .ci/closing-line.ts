import type { Reporter, TestModule } from 'vitest/node'

/** Last line of a run, in the plain form that any reader can count: "Tests: N passed, N failed, N skipped". */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): void {
    const failedChecks = (process.env['FAILED_CHECKS'] ?? '').split(',').filter((name) => name !== '')
    let passed = 0
    let failed = errors.length + failedChecks.length
    let skipped = 0
    for (const module of modules) {
      const tests = [...module.children.allTests()]
      for (const test of tests) {
        const { state } = test.result()
        if (state === 'passed') passed++
        else if (state === 'failed') failed++
        else skipped++
      }
      if (tests.length === 0 && !module.ok()) failed++ // a file that did not load
    }
    process.on('exit', () => {
      if (failedChecks.length > 0) process.stdout.write(`\nChecks that failed: ${failedChecks.join(', ')}`)
      process.stdout.write(`\nTests: ${String(passed)} passed, ${String(failed)} failed, ${String(skipped)} skipped\n`)
    })
  }
}
