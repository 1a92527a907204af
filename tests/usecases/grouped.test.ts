import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { askedOf, groupVerdicts } from '../../src/usecases/grouped.ts'
import type { DecisionRecord } from '../../src/usecases/record.ts'
import { judged, SHEETS } from '../cli/records.ts'
import { openHouse, type House } from '../http/house.ts'

let house: House
beforeAll(async () => {
  house = await openHouse()
})
afterAll(() => house.leave())

describe.each(SHEETS)('verdicts of %s, told together', (name) => {
  let record: DecisionRecord
  beforeAll(async () => {
    record = await judged(house, name)
  })

  it('every verdict stands in exactly one group, and a group says one thing of one kind of part', () => {
    const groups = groupVerdicts(record.verdicts)
    const told = groups.flatMap((g) => g.positions.map((at) => `${g.verdict.part}@${at}`)).sort()
    expect(told).toEqual(record.verdicts.map((v) => `${v.part}@${v.at}`).sort())
    for (const { verdict, positions } of groups) {
      const members = record.verdicts.filter((v) => v.part === verdict.part && positions.includes(v.at))
      for (const member of members) {
        expect([member.disposition, member.governing, member.because, member.mustTurnOut, member.ground]).toEqual([
          verdict.disposition,
          verdict.governing,
          verdict.because,
          verdict.mustTurnOut,
          verdict.ground,
        ])
      }
    }
  })

  it('a question is asked once, of every position where it is open', () => {
    const asked = askedOf(record)
    const all = asked.flatMap((q) => q.positions.map((at) => `${q.part}:${q.fact}@${at} ${q.reason}`))
    expect(new Set(all).size).toBe(all.length)
    const open = new Set(record.verdicts.flatMap((v) => v.open.map((q) => `${q.part}:${q.fact}@${q.at} ${q.why}`)))
    expect(new Set(all)).toEqual(open)
  })
})

it('a group of several positions names them all in its sentence', async () => {
  const record = await judged(house, {
    job: 'a row of studs',
    engine: 'QL-6P',
    findings: [{ part: 'rocker-stud', at: 'all exhaust', property: 'shoulder.groove-felt', value: true }],
  })
  const [group] = groupVerdicts(record.verdicts.filter((v) => v.part === 'rocker-stud'))
  expect(group?.says).toBe('Replace the rocker stud on 1–6 exhaust.')
})
