import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { fieldsOf } from '../../src/pages/fields.ts'
import { SUBJECTS } from '../../src/pages/subjects.ts'
import { judgeSheet } from '../../src/usecases/judge.ts'
import { sheetFrom } from '../../src/verdict/sheet.ts'
import { openHouse, type House } from '../http/house.ts'
import { fill, look, textOf } from './browse.ts'

let house: House
beforeAll(async () => {
  house = await openHouse()
})
afterAll(() => house.leave())

const STUD = '/stud?engine=QL-6P'
const GROOVED = { at: '3E', 'rocker-stud:shoulder.groove-felt': 'yes' }

describe('the counter', () => {
  it('asks four questions, and a page of each engine loads for every one', async () => {
    const home = await look(house, '/')
    expect(home.status).toBe(200)
    for (const subject of SUBJECTS) {
      expect(home.html).toContain(`href="/${subject.path}"`)
      for (const engine of house.service.book.book.engines.keys()) {
        const { status, html, text } = await look(house, `/${subject.path}?engine=${engine}`)
        expect([status, text.includes(subject.asks)]).toEqual([200, true])
        expect(html).toContain(`action="/${subject.path}?engine=${engine}#answer"`)
      }
    }
  })

  it('every property and verdict that a question names is in the rulebook, so no field is silently left out', () => {
    const { book } = house.service.book
    for (const subject of SUBJECTS) {
      for (const about of subject.about) expect([about, book.subjects[about] !== undefined]).toEqual([about, true])
      for (const engine of book.engines.values()) {
        const ids = [...fieldsOf(book, engine, subject).first, ...fieldsOf(book, engine, subject).more].map((f) => f.id)
        const wanted = [...subject.build, ...subject.moreBuild]
          .map((p) => `job:${p}`)
          .concat([...subject.fields, ...subject.moreFields].map((p) => `${subject.part}:${p}`))
        expect(ids).toEqual(expect.arrayContaining(wanted))
      }
    }
  })

  it('a form is made of the catalogue: its questions, choices, likely range and instruments', async () => {
    const { text } = await look(house, STUD)
    const stud = house.service.book.book.parts.get('rocker-stud')
    const depth = stud?.properties.get('shoulder.groove-depth')?.property
    expect(text).toContain(depth?.ask)
    expect(text).toContain('Likely 0 in (0 mm) to 0.060 in (1.52 mm).')
    expect(text).toContain('depth micrometer')
    const thread = stud?.properties.get('thread.condition')?.property
    for (const { says } of Object.values(thread?.kind === 'choice' ? thread.choices : {})) expect(text).toContain(says)
  })

  it('has no script, no style in a tag, and nothing from elsewhere', async () => {
    for (const page of [await look(house, '/'), await fill(house, STUD, GROOVED)]) {
      expect(page.html).not.toMatch(/<script|<style|\sstyle=|\son[a-z]+=|javascript:/i)
      expect(page.html).not.toMatch(/(?:src|href|action)="(?:https?:)?\/\//)
      const policy = page.headers.get('content-security-policy') ?? ''
      expect(policy).toMatch(/default-src 'none'/)
      expect(policy).not.toMatch(/script-src/)
    }
    const css = await look(house, '/assets/sheet.css')
    expect([css.status, css.headers.get('content-type')]).toEqual([200, expect.stringMatching(/^text\/css/)])
    expect(css.html).not.toMatch(/@import|url\(/)
  })

  it('an engine without a sheet is not guessed', async () => {
    const { status, text } = await look(house, '/stud?engine=V9')
    expect([status, text]).toEqual([404, expect.stringContaining('never guessed from another engine')])
  })
})

describe('an answer', () => {
  it('says the verdict, its reason and its source, hazards above it, and that it was not recorded', async () => {
    const before = await house.rows()
    const { status, html, text } = await fill(house, STUD, GROOVED)
    expect(status).toBe(200)
    expect(text).toContain('Replace the rocker stud on 3 exhaust.')
    expect(text).toContain('groove that a fingernail can feel')
    expect(text).toContain('Rocker studs grooved by the rocker')
    expect(text).toContain('Not recorded')
    expect(html.indexOf('class="hazards"')).toBeGreaterThan(0)
    expect(html.indexOf('class="hazards"')).toBeLessThan(html.indexOf('class="says"'))
    expect(textOf(html.slice(html.indexOf('class="hazards"'), html.indexOf('class="says"')))).toContain('may break or pull out in service')
    // What it opened is looked at next.
    expect(text).toMatch(/rocker on 3 exhaust/)
    expect(await house.rows()).toEqual(before)
  })

  it('is what the service judges of the same sheet, word for word', async () => {
    const findings = [
      { part: 'valve', at: '2E', property: 'tip.condition', value: 'light-chip' },
      { part: 'valve', at: '2E', property: 'length', value: '4.922 in', instrument: 'length-micrometer' },
      { part: 'valve', at: '2E', property: 'looked-over', value: 'bench look' },
    ]
    const record = await judgeSheet(
      house.service,
      undefined,
      sheetFrom({ job: 'same', engine: 'QL-6P', build: { casting: 'QP-1' }, findings }),
    )
    const { text } = await fill(house, '/tip?engine=QL-6P', {
      at: '2E',
      'job:casting': 'QP-1',
      'valve:tip.condition': 'light-chip',
      'valve:length': '4.922 in',
      'valve:length@instrument': 'length-micrometer',
      looked: 'bench look',
    })
    const verdict = record.verdicts.find((v) => v.part === 'valve')
    expect(text).toContain(verdict?.says)
    expect(text).toContain(verdict?.soFar)
    for (const { asks } of verdict?.asks ?? []) expect(text).toContain(asks.slice(asks.indexOf(': ') + 2))
    // A tip that may be ground is told so, although the valve can't be called yet.
    expect(text).toContain('If the rest is in order')
  })

  it('opens the chain: rule, reading with its doubt, limit, arithmetic and where they come from', async () => {
    const { html, text } = await fill(house, '/springs?engine=QL-8S', {
      'job:casting': 'QS-2',
      'job:camshaft': 'H-2',
      'job:springs': 'K-2',
      'job:seals': 'PS-50',
    })
    expect(html).toContain('<details class="chain">')
    expect(text).toContain('job.springs-clear-bind')
    expect(text).toMatch(/coil-bind margin at full lift: .+?\(at least 0\.060 in/)
    expect(text).toMatch(/by coil-bind-margin@1 from .+?1\.750 in/)
    expect(text).toMatch(/The limit, least coil-bind margin at full lift: common practice/)
    // Each strip says in words what it draws.
    for (const [, label = ''] of html.matchAll(/class="strip"[^>]*aria-label="([^"]*)"/g))
      expect(label).toMatch(/: .+: (?:met|not met|[a-z ]+)/)
  })

  it('the question about seals is answered by the pump and the choice alone', async () => {
    const { text } = await fill(house, '/seal?engine=QL-6P', { 'job:oil-pump': 'high-volume', 'job:seals': 'stock' })
    expect(text).toContain('The choice of stem seals does not go together')
    expect(text).toMatch(/umbrella seals shed only oil that comes from above/)
  })

  it('"not measured" is entered as such, and a field left empty is not entered', async () => {
    const { text } = await fill(house, STUD, { at: '3E', 'rocker-stud:shoulder.groove-felt': 'not measured', 'rocker-stud:nut.holds': '' })
    const [, nut = ''] = /Run down by hand, does the rocker nut drag on its own stud\?(.*?)<\/li>/s.exec(text) ?? []
    expect(text).toMatch(/fingernail catch in a groove.+?Open: asked for and not measured/)
    expect(nut).not.toContain('asked for and not measured')
  })

  it('readings that belong together are entered together', async () => {
    const stations = Object.fromEntries(['', '#1', '#2', '#3', '#4', '#5'].map((n) => [`valve:stem.diameter${n}`, '0.3690 in']))
    const { text } = await fill(house, '/tip?engine=QL-6P', { at: '1E', ...stations })
    expect(text).toContain('Replace the valve on 1 exhaust.')
    expect(text).toMatch(/The stem measures under 0\.3700 in/)
  })
})

describe('what is entered wrongly', () => {
  it('is said beside its field with the mend, what was typed stays, and nothing is judged', async () => {
    const { status, html, text } = await fill(house, STUD, {
      at: '3E',
      'rocker-stud:shoulder.groove-depth': '12 kg',
      'rocker-stud:thread.condition': 'dinged',
    })
    expect(status).toBe(422)
    expect(text).toContain('One thing needs mending; nothing was judged.')
    expect(html).toMatch(/id="rocker-stud:shoulder\.groove-depth-fault"/)
    expect(html).toMatch(/href="#rocker-stud:shoulder\.groove-depth-fault"/)
    expect(text).toMatch(/12 kg .*is a unit of mass/)
    expect(html).toContain('value="12 kg"')
    expect(html).toMatch(/<option value="dinged"\s+selected/)
    expect(html).toMatch(/<option value="3E"\s+selected/)
    expect(html).not.toContain('class="verdict')
  })

  it('all of it is said at once, the missing place too', async () => {
    const { status, text } = await fill(house, STUD, { 'rocker-stud:shoulder.groove-depth': 'deep', 'rocker-stud:standing-height': '9 in' })
    expect([status, text]).toEqual([422, expect.stringContaining('3 things need mending')])
    expect(text).toContain('Choose its place on the engine.')
  })

  it('a value with "not measured" ticked beside it is asked back', async () => {
    const { status, text } = await fill(house, STUD, {
      at: '3E',
      'rocker-stud:shoulder.groove-depth': '5 thou',
      'rocker-stud:shoulder.groove-depth@not-measured': '1',
    })
    expect([status, text]).toEqual([422, expect.stringContaining('"not measured" is ticked too')])
  })

  it('an empty form is no question', async () => {
    const { status, text } = await fill(house, STUD, { at: '3E' })
    expect([status, text]).toEqual([422, expect.stringContaining('Nothing was entered.')])
  })

  it.each(['"><script>alert(1)</script>', "' onfocus='x", '</textarea><img src=x>'])(
    '%s stays text wherever it is shown',
    async (nasty) => {
      const faulty = await fill(house, STUD, {
        at: nasty,
        job: nasty,
        by: nasty,
        'rocker-stud:shoulder.groove-depth': nasty,
        'rocker-stud:thread.condition': nasty,
      })
      const answered = await fill(house, STUD, { ...GROOVED, job: nasty, by: nasty })
      for (const { html } of [faulty, answered]) {
        expect(html).not.toMatch(/<script|<img|<\/textarea/)
        expect(html).not.toContain(nasty)
      }
      expect([faulty.status, answered.status]).toEqual([422, 200])
    },
  )

  it('more than a form holds is refused', async () => {
    const { status, text } = await fill(house, STUD, { ...GROOVED, by: 'x'.repeat(70_000) })
    expect([status, text]).toEqual([413, expect.stringContaining('more than a form holds')])
  })
})
