#!/usr/bin/env node
// Writes src/store/migrations.ts from the SQL files beside it, so that a bundle carries its migrations: workerd has no files to read.
// With --check it writes nothing and fails when the module is not current.
import { readFileSync, writeFileSync } from 'node:fs'

const folder = new URL('../src/store/migrations/', import.meta.url)
const module = new URL('../src/store/migrations.ts', import.meta.url)

const { entries } = JSON.parse(readFileSync(new URL('meta/_journal.json', folder), 'utf8'))
const migrations = entries.map(({ tag }) => {
  const statements = readFileSync(new URL(`${tag}.sql`, folder), 'utf8').split('--> statement-breakpoint')
  return { name: tag, statements: statements.map((s) => s.trim()).filter((s) => s !== '') }
})

/** As a template literal, so that the SQL reads as it does in its file. */
const quoted = (text) => `\`${text.replaceAll(/[\\`]|\$\{/g, (found) => `\\${found}`)}\``

const text = [
  '// Written by .setup/embed-migrations.mjs from the SQL files in migrations/; change those, not this.',
  '',
  '/** One step of the schema: its statements run in one batch. */',
  'export interface Migration {',
  '  readonly name: string',
  '  readonly statements: readonly string[]',
  '}',
  '',
  '/** Every step, oldest first. */',
  'export const MIGRATIONS: readonly Migration[] = [',
  ...migrations.flatMap(({ name, statements }) => [
    '  {',
    `    name: '${name}',`,
    '    statements: [',
    ...statements.map((s) => `      ${quoted(s)},`),
    '    ],',
    '  },',
  ]),
  ']',
  '',
].join('\n')

if (process.argv.includes('--check')) {
  if (readFileSync(module, 'utf8') !== text) {
    console.error('src/store/migrations.ts is not what the SQL files give. Run: node .setup/embed-migrations.mjs')
    process.exitCode = 1
  }
} else {
  writeFileSync(module, text)
}
