// Writes src/rulebook/shelf.ts: every file of rules/ as an import, so that the rulebook reaches the worker by bundling
// and Node reads the very same modules. Run by `npm run generate`; a test holds that the file is current.
import { readdirSync, statSync } from 'node:fs'
import { join, relative } from 'node:path'

const root = new URL('..', import.meta.url).pathname
const rules = join(root, 'rules')

function filesUnder(folder: string): readonly string[] {
  return readdirSync(folder)
    .sort()
    .flatMap((name) => {
      const path = join(folder, name)
      return statSync(path).isDirectory() ? filesUnder(path) : [relative(rules, path)]
    })
}

/** The text of src/rulebook/shelf.ts, from what lies in rules/ now. */
export function shelf(): string {
  const files = filesUnder(rules)
    .filter((path) => path.endsWith('.json'))
    .sort()
  const imports = files.map((path, i) => `import f${i} from '../../rules/${path}' with { type: 'json' }`)
  const entries = files.map((path, i) => `  '${path}': f${i},`)
  return [
    '// Written by .setup/shelf.ts (npm run generate); do not edit.',
    ...imports,
    '',
    '/** Every file under rules/, by its path there. */',
    'export const FILES: Readonly<Record<string, unknown>> = {',
    ...entries,
    '}',
    '',
  ].join('\n')
}
