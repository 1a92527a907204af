// Runs before `npm start` and `npm test` on whatever Node is at hand (20 or later): installs what is missing, and nothing else.
// `node .setup/install.mjs --browser` also sees to a browser for the page tests.
import { execFileSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

const root = new URL('..', import.meta.url).pathname
const modules = join(root, 'node_modules')
const marker = join(modules, '.installed-for')

const wanted = createHash('sha256')
for (const file of ['package.json', 'package-lock.json']) wanted.update(readFileSync(join(root, file)))
const hash = wanted.digest('hex')
const installed = existsSync(marker) ? readFileSync(marker, 'utf8') : ''

if (installed !== hash) {
  console.log('Installing packages (once; a minute or so) …')
  // Errors only: on Node 20 npm warns of packages that want 22, which then run on the Node 24 that is installed here.
  execFileSync('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error'], { cwd: root, stdio: 'inherit' })
  writeFileSync(marker, hash)
}

// So that `npx witnessmark` finds the checkout's own command.
const bin = join(modules, '.bin', 'witnessmark')
if (!existsSync(bin)) {
  mkdirSync(join(modules, '.bin'), { recursive: true })
  rmSync(bin, { force: true })
  symlinkSync('../../src/cli/witnessmark.mjs', bin)
}

if (process.argv.includes('--browser') && !existsSync('/usr/bin/chromium')) {
  console.log('Installing a browser for the page tests (Debian’s chromium) …')
  const root_ = process.getuid?.() === 0 ? [] : ['sudo', '-n']
  const run = (...args) => {
    const [command, ...rest] = [...root_, ...args]
    execFileSync(command, rest, { stdio: ['ignore', 'ignore', 'inherit'], env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } })
  }
  try {
    run('apt-get', 'update')
    run('apt-get', 'install', '-y', '--no-install-recommends', 'chromium')
  } catch {
    console.error(
      'No browser could be installed: the page tests need /usr/bin/chromium (Debian package chromium). Install it and run npm test again.',
    )
    process.exit(1)
  }
}
