// Prints the closing line of a test run: "N passed, N failed".
import { existsSync, readFileSync } from 'node:fs'

const file = new URL('../.data/test-run.json', import.meta.url)
if (!existsSync(file)) {
  console.log('0 passed, 1 failed')
  process.exit(1)
}
const { numPassedTests, numFailedTests, numFailedTestSuites = 0, testResults = [] } = JSON.parse(readFileSync(file, 'utf8'))
// A file that could not even be loaded has no failed test of its own, and counts as one failure.
const unloaded = testResults.filter((t) => t.status === 'failed' && t.assertionResults.length === 0).length
void numFailedTestSuites
console.log(`${numPassedTests} passed, ${numFailedTests + unloaded} failed`)
