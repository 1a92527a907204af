import { stripVTControlCharacters } from 'node:util'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { PLAIN, TERMINAL } from '../../src/cli/layout.ts'
import { report } from '../../src/cli/report.ts'
import type { DecisionRecord } from '../../src/usecases/record.ts'
import { openHouse, type House } from '../http/house.ts'
import { entered, judged, SHEETS } from './records.ts'

let house: House
beforeAll(async () => {
  house = await openHouse()
})
afterAll(() => house.leave())

/** The report with its line breaks taken out, for looking up sentences. */
const running = (text: string): string => text.replace(/[│┌┐└┘─]/g, ' ').replace(/\s+/g, ' ')

/** The lines of one section. */
function section(text: string, title: string): string {
  const lines = text.split('\n')
  const from = lines.indexOf(title)
  const to = lines.findIndex((line, i) => i > from && /^[A-Z][A-Z ]+$/.test(line))
  return from < 0 ? '' : lines.slice(from + 1, to < 0 ? undefined : to).join('\n')
}

describe.each(SHEETS)('the report on %s', (name) => {
  let record: DecisionRecord
  let text: string
  beforeAll(async () => {
    record = await judged(house, name)
    text = report(record)
  })

  it('fits its columns at every width, and ends with a line break', () => {
    for (const columns of [60, 80, 88, 100]) {
      const lines = report(record, { columns }).split('\n')
      // A hash and an id of a rule can't be broken.
      for (const line of lines)
        if (line.trim().split(' ').length > 1 && !/[0-9a-f]{64}/.test(line)) expect(line.length, line).toBeLessThanOrEqual(columns)
      expect(lines[lines.length - 1]).toBe('')
    }
  })

  it('puts hazards before anything that is to be done, in full', () => {
    const hazards = record.plan.cautions.filter((c) => c.level === 'hazard')
    expect(hazards.length).toBeGreaterThan(0)
    const first = text.search(/^(?:REPLACE|RECONDITION|MEASURE FIRST|REUSE)$/m)
    const box = running(text.slice(0, first))
    for (const { words } of hazards) expect(box).toContain(running(words))
  })

  it('says every reason, every proviso and every line of work', () => {
    const said = running(text)
    for (const verdict of record.verdicts) {
      for (const words of [...verdict.because, ...verdict.mustTurnOut, ...verdict.advice]) expect(said).toContain(running(words))
    }
    for (const line of record.plan.workOrder) expect(said).toContain(running(line.words))
    for (const check of record.plan.returnChecks) expect(said).toContain(running(check.words))
    for (const words of record.plan.told) expect(said).toContain(running(words))
  })

  it('names what nobody looked at', () => {
    const unseen = section(text, 'NOBODY LOOKED AT')
    for (const { part } of record.unseen) expect(unseen).toContain(part.replaceAll('-', ' '))
  })

  it('says nothing twice about how groups were understood', () => {
    const groups = section(text, 'HOW THE SHEET WAS READ').match(/^ {2}– [a-z ]+, ".*$/gm) ?? []
    expect(groups.length).toBeGreaterThan(0)
    expect(new Set(groups).size).toBe(groups.length)
  })

  it('says every note on how the sheet was read, with each place that it holds of', () => {
    const notes = running(section(text, 'HOW THE SHEET WAS READ'))
    for (const note of record.notes) {
      const [, place = '', says = ''] = /^(\/\S+): (.*)$/.exec(note) ?? []
      expect(notes).toContain(running(says))
      expect(notes).toContain(place)
      expect(notes.split(running(says)), says).toHaveLength(2)
    }
  })

  it('keeps the stages of work in their order, numbered', () => {
    const stages = [...new Set(record.plan.workOrder.map((l) => l.stage))]
    const work = section(text, 'ORDER OF WORK')
    const numbers = [...work.matchAll(/^ *(\d+)\. (.+)$/gm)]
    expect(numbers.map(([, n]) => Number(n))).toEqual(stages.map((_, i) => i + 1))
    numbers.forEach(([, , words], i) => expect(stages[i]?.startsWith(words ?? '?')).toBe(true))
  })

  it('colour adds nothing and hides nothing', () => {
    const coloured = report(record, { ink: TERMINAL })
    expect(coloured).not.toBe(text)
    expect(stripVTControlCharacters(coloured)).toBe(report(record, { ink: PLAIN }))
  })

  it('holds no mark that nobody filled in', () => {
    expect(text).not.toMatch(/undefined|\[object|\{[a-z]+\}|NaN/)
  })
})

describe('wording', () => {
  it('what must be done comes first, what is well last', async () => {
    const text = report(await judged(house, 'ql-6p-mixed-findings'))
    const order = [
      'REPLACE',
      'RECONDITION',
      'MEASURE FIRST',
      'REUSE',
      'THE JOB AS A WHOLE',
      'ORDER OF WORK',
      'PARTS',
      'WHEN THE WORK COMES BACK',
      'MEASURE NEXT',
    ]
    const places = order.map((title) => text.indexOf(`\n${title}\n`))
    expect(places.every((at) => at > 0)).toBe(true)
    expect(places).toEqual([...places].sort((a, b) => a - b))
  })

  it('a stud with a felt groove is replaced with its reason, its ground, and what it opens', async () => {
    const text = report(
      await judged(house, {
        job: 'one stud',
        engine: 'QL-6P',
        findings: [{ part: 'rocker-stud', at: '3E', property: 'shoulder.groove-felt', value: true }],
      }),
    )
    const replace = running(section(text, 'REPLACE'))
    expect(replace).toContain('Replace the rocker stud on 3 exhaust.')
    expect(replace).toMatch(/groove that a fingernail can feel/)
    expect(replace).toMatch(/look at next: .*rocker 3 exhaust/)
    expect(replace).toContain('rocker-stud.groove-condemns')
    expect(replace).toContain('Stands on: common practice.')
    // This engine guides its pushrods in the head: nobody is sent to look at a plate that it does not have.
    expect(text).not.toContain('guide plate cylinder')
  })

  it('a remembered limit is called so, and who made it count', async () => {
    const finding = { part: 'rocker-stud', at: '3E', property: 'shoulder.groove-depth', value: '10 thou', instrument: 'depth-micrometer' }
    const text = running(report(await judged(house, { job: 'one stud', engine: 'QL-6P', findings: [finding] })))
    expect(text).toContain('Limits: 0.005 in (remembered, adopted by the shop).')
  })

  it('a part that a set governs keeps its own verdict beside the set’s', async () => {
    const text = running(section(report(await judged(house, 'ql-8s-cam-and-pump')), 'RENEWED AS A SET'))
    expect(text).toMatch(/Rocker stud 1–8 intake and exhaust: renewed with the stud set\. its own verdict: Reuse the rocker stud/)
  })

  it('a question is asked once for all positions, with the instrument', async () => {
    const next = running(
      section(
        report(
          await judged(house, {
            job: 'margins',
            engine: 'QL-6P',
            findings: [{ part: 'valve', at: 'all exhaust', property: 'looked-over', value: 'bench look' }],
          }),
        ),
        'MEASURE NEXT',
      ),
    )
    expect(next.match(/How thick is the margin/g)).toHaveLength(1)
    expect(next).toMatch(/valve 1–6 exhaust: How thick is the margin.*?With: caliper\./)
  })

  it('a judgement says that it is in no ledger; a decision ends with where to find it', async () => {
    expect(report(await judged(house, 'ql-8s-cam-and-pump'))).toContain('Not recorded')
    const record = await entered(house, 'ql-8s-cam-and-pump')
    const tail = section(report(record), 'RECORD')
    for (const mark of [record.id, String(record.ledger?.seq), record.ledger?.hash, record.edition]) expect(tail).toContain(mark)
  })

  it('a job’s name can’t drive the terminal', async () => {
    const text = report(await judged(house, { job: 'a\u001b]0;b\u0007c\u009b31m', engine: 'QL-6P', findings: [] }))
    expect(text).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f]/)
  })
})
