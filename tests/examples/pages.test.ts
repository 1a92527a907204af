/** What README.md and examples/README.md tell a newcomer to paste, pasted; and what they say will come out, looked for. */
import { execFile } from 'node:child_process'
import { chmod, mkdtemp, readFile, rm, stat, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { delimiter, dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { DecisionRecord } from '../../src/usecases/record.ts'
import { openHouse, type House } from '../http/house.ts'
import { fencesOf, linesOf, linksOf } from './fences.ts'

const root = fileURLToPath(new URL('../../', import.meta.url))
const PAGES = ['README.md', 'examples/README.md'] as const
const pages = new Map<string, string>(await Promise.all(PAGES.map(async (p) => [p, await readFile(join(root, p), 'utf8')] as const)))
const fences = PAGES.flatMap((page) => fencesOf(pages.get(page) ?? '').map((fence) => ({ page, ...fence })))
/** A command of the shell as it is pasted, longer ones over several lines joined. */
const shell = fences.flatMap(({ page, language, text, answer }) =>
  language === 'sh' ? linesOf(text.replaceAll('\\\n', ' ')).map((line) => ({ page, line, answer })) : [],
)
const commands = shell.filter((c) => /\bnpx witnessmark\b/.test(c.line))
const MINUTE = 60_000

let folder: string
let house: House
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'witnessmark-pages-'))
  // Stands in for npx, which finds the command of this very checkout but takes its time over it.
  const npx = join(folder, 'npx')
  await writeFile(npx, `#!/bin/sh\nshift\nexec "${process.execPath}" "${join(root, 'src/cli/witnessmark.mjs')}" "$@"\n`)
  await chmod(npx, 0o755)
  house = await openHouse()
})
afterAll(async () => {
  await house.leave()
  await rm(folder, { recursive: true, force: true })
})

interface Ran {
  readonly code: number | null
  readonly out: string
  readonly err: string
}

function paste(line: string): Promise<Ran> {
  return new Promise((resolve) => {
    const env = { PATH: `${folder}${delimiter}${process.env['PATH'] ?? ''}`, DATABASE_URL: `file:${join(folder, 'shop.db')}` }
    const child = execFile('sh', ['-c', line], { cwd: root, env, maxBuffer: 64 << 20 }, (_error, out, err) =>
      resolve({ code: child.exitCode, out, err }),
    )
  })
}

/** Line breaks and the frame of the box taken out, so that a sentence is found however it was broken. */
const running = (text: string): string => text.replace(/[│┌┐└┘─]/g, ' ').replace(/\s+/g, ' ')

describe('the pages', () => {
  it('tell more than one thing to paste, and every command in them is one of those tried here', () => {
    expect(commands.length).toBeGreaterThanOrEqual(15)
    for (const { line } of shell) expect(line).toMatch(/\bnpx witnessmark (judge|decide) |^npm (start|test)\b|^curl /)
  })

  it.each(PAGES)('%s links to what is there', async (page) => {
    const links = linksOf(pages.get(page) ?? '')
    expect(links.length).toBeGreaterThan(5)
    for (const link of links)
      expect(
        await stat(join(root, dirname(page), link)).then(
          () => 'there',
          () => `${link} is missing`,
        ),
      ).toBe('there')
  })

  it('name scripts that package.json has', async () => {
    const { scripts } = JSON.parse(await readFile(join(root, 'package.json'), 'utf8')) as { scripts: Record<string, string> }
    const named = shell.flatMap(({ line }) => /^npm (\w+)/.exec(line)?.[1] ?? [])
    expect(named).toEqual(expect.arrayContaining(['start', 'test']))
    for (const name of named) expect(scripts[name]).toBeDefined()
  })
})

describe.each(commands)('$page: $line', ({ line, answer }) => {
  it(
    'does what the page says',
    async () => {
      const { code, out, err } = await paste(line)
      expect([code, err]).toEqual([0, ''])
      if (/ --json\b/.test(line)) {
        const record = JSON.parse(out) as DecisionRecord
        expect([record.verdicts.length > 0, record.recorded]).toEqual([true, /\bdecide\b/.test(line)])
      } else expect(out.includes('Not recorded')).toBe(/\bjudge\b/.test(line))
      const said = running(out)
      for (const words of answer ?? []) expect(said).toContain(running(words))
    },
    MINUTE,
  )
})

describe('README.md', () => {
  it('its request by HTTP is answered', async () => {
    const [curl] = shell.filter((c) => c.line.startsWith('curl ')).map((c) => c.line)
    const [, path = ''] = /http:\/\/127\.0\.0\.1:8787(\/\S*)/.exec(curl ?? '') ?? []
    const [, file = ''] = /--data-binary @(\S+)/.exec(curl ?? '') ?? []
    const headers = [...(curl ?? '').matchAll(/-H ["']([^:"']+): ([^"']+)["']/g)].map(([, name = '', value = '']): [string, string] => [
      name,
      value.replace('$KEY', house.key),
    ])
    expect(headers.map(([name]) => name)).toEqual(['Authorization', 'Content-Type'])
    const response = await house.app.request(path, { method: 'POST', headers, body: await readFile(join(root, file), 'utf8') })
    expect(response.status).toBe(200)
    const record = (await response.json()) as DecisionRecord
    expect([record.recorded, record.job]).toEqual([false, 'QLE-2031-0402, the pump at the weir'])
  })

  it('its finding sheet is judged: margin, groove and the rocker with it', async () => {
    const [sheet] = fences.filter((f) => f.page === 'README.md' && f.language === 'json')
    const response = await house.app.request('/v1/judgements', {
      method: 'POST',
      headers: { authorization: `Bearer ${house.key}`, 'content-type': 'application/json' },
      body: sheet?.text ?? '',
    })
    expect(response.status).toBe(200)
    const { verdicts } = (await response.json()) as DecisionRecord
    const called = verdicts.filter((v) => v.part !== 'guide-plate' && v.disposition === 'replace' && v.at === '3E')
    // 0.056 in by caliper against 0.055: one u over, so the safe side; the groove condemns its stud, and the rocker with it.
    expect(called.map((v) => v.part).sort()).toEqual(['rocker', 'rocker-stud', 'valve'])
    // Eleven more valves were looked over and not measured: none of them is called fit.
    expect(verdicts.filter((v) => v.part === 'valve' && v.disposition === 'undetermined')).toHaveLength(11)
    expect(verdicts.filter((v) => v.part === 'valve' && v.disposition === 'reuse')).toEqual([])
  })
})
