#!/usr/bin/env node
// Starts the command on Node 24 or later, which reads TypeScript itself. On an older Node it runs the one that
// `npm install` put beside the checkout. Plain JavaScript, since it must start on whatever Node is at hand.
import { spawn } from 'node:child_process'
import { existsSync } from 'node:fs'
import { constants } from 'node:os'
import { fileURLToPath } from 'node:url'

const NEEDED = 24
const main = new URL('./main.ts', import.meta.url)
const own = fileURLToPath(new URL(`../../node_modules/.bin/node${process.platform === 'win32' ? '.cmd' : ''}`, import.meta.url))

if (Number(process.versions.node.split('.')[0]) >= NEEDED) {
  await import(main.href)
} else if (existsSync(own)) {
  const child = spawn(own, [fileURLToPath(main), ...process.argv.slice(2)], { stdio: 'inherit', shell: process.platform === 'win32' })
  // The child gets the terminal's own signals; this one only waits, and then ends as the child did.
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => child.kill(signal))
  child.on('exit', (code, signal) => process.exit(code ?? 128 + (constants.signals[signal] ?? 0)))
} else {
  console.error(`witnessmark needs Node ${NEEDED} or later; this is ${process.version}, and the checkout has none of its own yet.`)
  console.error('Run "npm ci" in the checkout once: it installs the right Node beside it.')
  process.exitCode = 2
}
