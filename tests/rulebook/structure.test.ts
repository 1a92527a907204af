/** What must hold of the rulebook as a whole, beside what the loader itself refuses. */
import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { schemaFiles } from '../../.setup/schemas.ts'
import { shelf } from '../../.setup/shelf.ts'
import { Refused } from '../../src/quantity/fault.ts'
import { loadRulebook } from '../../src/rulebook/load.ts'
import { compileBook } from '../../src/verdict/compiled.ts'
import { leavesOf } from '../../src/verdict/condition-leaves.ts'
import { filesOnDisk } from './files.ts'

const root = new URL('../../', import.meta.url).pathname
const files = filesOnDisk()
const book = compileBook(loadRulebook(files))

describe('written by a program, and current (npm run generate)', () => {
  it('the shelf holds every file of rules/', () => {
    expect(readFileSync(join(root, 'src/rulebook/shelf.ts'), 'utf8')).toBe(shelf())
  })

  it('schemas/ are those of the loader and the doors', () => {
    const wanted = schemaFiles()
    expect(readdirSync(join(root, 'schemas')).sort()).toEqual([...wanted.keys()].sort())
    for (const [name, text] of wanted) expect(readFileSync(join(root, 'schemas', name), 'utf8'), name).toBe(text)
  })
})

describe('every data file', () => {
  it.each(Object.entries(files))('%s points its editor at its schema, on the first line', (path, content) => {
    const [first] = Object.keys(content as object)
    expect(first).toBe('$schema')
    const named = (content as { $schema: string }).$schema
    expect(statSync(join(root, 'rules', path, '..', named)).isFile()).toBe(true)
  })

  it('is refused by name when it holds a key that nobody knows, or lies where nothing belongs', () => {
    const rule = files['rocker-stud/groove-condemns.json'] as object
    const faultsOf = (changed: Record<string, unknown>): readonly string[] => {
      try {
        loadRulebook({ ...files, ...changed })
        return []
      } catch (error) {
        return error instanceof Refused ? error.faults.map((f) => `${f.code} ${f.pointer}`) : []
      }
    }
    expect(faultsOf({ 'rocker-stud/groove-condemns.json': { ...rule, unti: 'mm' } })).toEqual([
      'key-unknown /rocker-stud~1groove-condemns.json',
    ])
    expect(faultsOf({ 'rocker-stud/notes/scribble.json': {} })).toEqual(['file-unknown /rocker-stud~1notes~1scribble.json'])
    expect(faultsOf({ 'rocker-stud/groove-condemns.json': { ...rule, id: 'rocker-stud.other' } })).toContain(
      'id-not-path /rocker-stud~1groove-condemns.json/id',
    )
    expect(faultsOf({ 'rocker-stud/groove-condemns.json': { ...rule, sources: ['a-book-nobody-wrote'] } })).toEqual([
      'source-unknown /rocker-stud~1groove-condemns.json/sources',
    ])
    expect(
      faultsOf({
        'rocker-stud/groove-condemns.json': {
          ...rule,
          when: { any: [{ fact: 'shoulder.groove-felt', operator: 'above', value: '1 mm' }] },
        },
      }),
    ).toEqual(['leaf-kind /rocker-stud~1groove-condemns.json/when/any/0'])
    expect(faultsOf({ 'rocker-stud/groove-condemns.json': { ...rule, when: { any: [], all: [] } } }).length).toBeGreaterThan(0)
  })
})

describe('what a verdict may rest on', () => {
  it('no rule condemns or restores on memory alone, unless by a limit that the shop must adopt', () => {
    const onMemory = [...book.rules.values()].filter(({ rule, kind }) => {
      if (kind !== 'condemns' && kind !== 'restores') return false
      if (!rule.sources.every((s) => book.book.sources.get(s)?.kind === 'from memory')) return false
      return !leavesOf(rule.when).some((l) => typeof l.value === 'object' && 'fact' in l.value)
    })
    expect(onMemory.map(({ rule }) => rule.id)).toEqual([])
  })

  it('every source is used, and every caution and operation too', () => {
    const text = JSON.stringify([...book.rules.values()].map((r) => r.rule)) + JSON.stringify(files)
    const unused = (ids: Iterable<string>, own: (id: string) => number): readonly string[] =>
      [...ids].filter((id) => text.split(`"${id}"`).length - 1 <= own(id))
    // A source names itself once; a caution and an operation are a key of their own file.
    expect(unused(book.book.sources.keys(), () => 1)).toEqual([])
    expect(unused(Object.keys(book.book.operations), () => 1)).toEqual([])
  })

  it('says the share of limits by provenance', () => {
    const count = new Map<string, number>()
    for (const cls of book.book.parts.values())
      for (const l of cls.limits.values()) for (const d of l.defaults) count.set(d.provenance, (count.get(d.provenance) ?? 0) + 1)
    console.log(
      `${book.rules.size} rules, ${[...book.rules.values()].reduce((n, r) => n + r.rule.cases.length, 0)} cases, ${book.book.sources.size} sources; limits: ${[...count].map(([p, n]) => `${n} ${p}`).join(', ')}`,
    )
    expect(count.get('published') ?? 0).toBeGreaterThan(0)
  })
})

/** Figures with units of the trade ("0.060 in", "30°") belong in rules/; src/ knows none. */
it('no figure of the trade stands in src/', () => {
  const sources = (folder: string): readonly string[] =>
    readdirSync(folder).flatMap((name) =>
      statSync(join(folder, name)).isDirectory() ? sources(join(folder, name)) : name.endsWith('.ts') ? [join(folder, name)] : [],
    )
  const found = sources(join(root, 'src'))
    // quantity/ is about the units themselves, compute/ about the equations, pages/style/ about paper.
    .filter((path) => !/src\/(quantity|compute|pages\/style)\//.test(path) && !path.endsWith('shelf.ts'))
    .flatMap((path) => {
      const code = readFileSync(path, 'utf8')
        .replace(/\/\*[\s\S]*?\*\//g, '')
        .replace(/(^|[^:'"`])\/\/.*$/gm, '$1')
      return [...code.matchAll(/\b\d*\.?\d+ ?(in|inch|mm|thou|lb|lbf|N|psi|kPa|deg|°)\b/g)].map(
        (m) => `${path.slice(root.length)}: ${m[0]}`,
      )
    })
    // How a figure is written, in the words that ask for one.
    .filter((line) => !/src\/rulebook\/(check(-rule|-engine)?|literal)\.ts|src\/verdict\/sheet\.ts/.test(line))
  expect(found).toEqual([])
})
