import { writeFileSync } from 'node:fs'
import { shelf } from './shelf.ts'

writeFileSync(new URL('../src/rulebook/shelf.ts', import.meta.url), shelf())
