import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join, relative } from 'node:path'

const rules = new URL('../../rules/', import.meta.url).pathname

/** The files of rules/ as they lie on disk, unlike the bundled shelf: so a test sees a file that the shelf forgot. */
export function filesOnDisk(folder = rules): Record<string, unknown> {
  const files: Record<string, unknown> = {}
  for (const name of readdirSync(folder).sort()) {
    const path = join(folder, name)
    if (statSync(path).isDirectory()) Object.assign(files, filesOnDisk(path))
    else files[relative(rules, path)] = JSON.parse(readFileSync(path, 'utf8'))
  }
  return files
}
