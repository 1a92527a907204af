import type { CompiledBook } from './compiled.ts'
import type { EnteredSheet } from './entered.ts'
import type { Judgement } from './judge.ts'
import { firstOperation, inOrder, ordersOf, placesOf, type Orders } from './orders.ts'
import { partsList, type PartsLine } from './parts-list.ts'
import { ask, providedInWords, type ToldQuestion } from './told.ts'
import { positionsInWords } from './where.ts'
import { nameOf, reason } from './words.ts'

export interface Caution {
  readonly id: string
  readonly level: 'hazard' | 'caution'
  readonly words: string
  readonly source: string
}

export interface WorkLine {
  readonly stage: string
  readonly who: 'bench' | 'machine shop' | 'assembly'
  readonly operation: string
  readonly words: string
  /** Where: part and positions; empty for the whole job. */
  readonly at: readonly { readonly part: string; readonly positions: readonly string[] }[]
  /** Why, with the figures to work to, where a restoring rule or a choice of the job orders it. */
  readonly because: readonly { readonly part: string; readonly at: string; readonly words: string }[]
  /** What must turn out while doing it, with figures. */
  readonly provided: readonly { readonly part: string; readonly at: string; readonly words: string }[]
}

export interface ReturnCheck {
  readonly operation: string
  readonly words: string
  readonly at: readonly { readonly part: string; readonly positions: readonly string[] }[]
}

/** What leaves the building: hazards first, the order in working order, parts, and what is checked when the work comes back. */
export interface Plan {
  readonly cautions: readonly Caution[]
  readonly workOrder: readonly WorkLine[]
  readonly partsList: readonly PartsLine[]
  readonly returnChecks: readonly ReturnCheck[]
  /** What the machine shop and the bench are told besides. */
  readonly told: readonly string[]
  /** What to measure next over the whole job, what settles most first. */
  readonly measureFirst: readonly ToldQuestion[]
}

const MEASURE_FIRST = 12

export function planOf(book: CompiledBook, sheet: EnteredSheet, judgement: Judgement): Plan {
  const orders = ordersOf(book, judgement)
  return {
    cautions: cautionsOf(book, judgement, orders),
    workOrder: workOrder(book, judgement, orders),
    partsList: partsList(book, sheet, judgement),
    returnChecks: returnChecks(book, judgement, orders),
    told: toldOf(book, judgement),
    measureFirst: measureFirst(book, judgement),
  }
}

function workOrder(book: CompiledBook, judgement: Judgement, orders: Orders): readonly WorkLine[] {
  return inOrder(book, orders).flatMap((operation): WorkLine[] => {
    const entry = book.book.operations[operation]
    if (entry === undefined) return []
    const provided = judgement.verdicts.flatMap((v) =>
      v.provided
        .filter((p) => firstOperation(book, p.rule) === operation)
        .map((p) => ({
          part: v.part,
          at: v.at,
          words: providedInWords(book, judgement.facts, book.book.subjects[v.part] === undefined ? v.part : 'job', v.at, p),
        })),
    )
    const because = judgement.verdicts.flatMap((v) => {
      const subject = book.book.subjects[v.part] !== undefined
      if (!(orders.get(operation)?.get(v.part)?.includes(v.at) ?? false) || (!subject && v.disposition !== 'recondition')) return []
      return v.steps
        .filter(
          (s) =>
            s.outcome === 'met' &&
            (s.kind === 'restores' || (subject && s.kind === 'condemns')) &&
            firstOperation(book, s.rule) === operation,
        )
        .map((s) => ({
          part: v.part,
          at: v.at,
          words: reason(book.book, judgement.facts, subject ? 'job' : v.part, v.at, book.rules.get(s.rule)?.rule.says ?? ''),
        }))
    })
    const stage = book.book.order.stages.find((s) => s.id === entry.stage)
    return [
      {
        stage: stage?.words ?? entry.stage,
        who: entry.who,
        operation,
        words: entry.words,
        at: placesOf(orders.get(operation) ?? new Map()),
        because,
        provided,
      },
    ]
  })
}

function returnChecks(book: CompiledBook, judgement: Judgement, orders: Orders): readonly ReturnCheck[] {
  const checks: ReturnCheck[] = inOrder(book, orders).flatMap((operation) => {
    const check = book.book.operations[operation]?.check
    return check === undefined ? [] : [{ operation, words: check, at: placesOf(orders.get(operation) ?? new Map()) }]
  })
  for (const v of judgement.verdicts) {
    const part = book.book.subjects[v.part] === undefined ? v.part : 'job'
    for (const p of v.provided)
      checks.push({
        operation: firstOperation(book, p.rule) ?? '',
        words: providedInWords(book, judgement.facts, part, v.at, p),
        at: [{ part: v.part, positions: [v.at] }],
      })
  }
  return checks
}

function cautionsOf(book: CompiledBook, judgement: Judgement, orders: Orders): readonly Caution[] {
  const ids = new Set<string>()
  for (const [id, caution] of Object.entries(book.book.cautions)) if (caution.always) ids.add(id)
  for (const verdict of judgement.verdicts) {
    for (const step of verdict.steps) {
      const cautions = book.rules.get(step.rule)?.rule.cautions ?? []
      // A hazard speaks up as soon as it can't be excluded.
      for (const id of cautions)
        if (step.outcome === 'met' || (step.outcome === 'unknown' && book.book.cautions[id]?.level === 'hazard' && step.kind === 'advises'))
          ids.add(id)
    }
  }
  for (const operation of orders.keys()) for (const id of book.book.operations[operation]?.cautions ?? []) ids.add(id)
  const level = (id: string): number => (book.book.cautions[id]?.level === 'hazard' ? 0 : 1)
  // What was found on a part comes before what goes with the work, and that before what is always said.
  const found = new Set(
    judgement.verdicts
      .filter((v) => book.book.subjects[v.part] === undefined)
      .flatMap((v) => v.steps.filter((s) => s.outcome === 'met').flatMap((s) => book.rules.get(s.rule)?.rule.cautions ?? [])),
  )
  const near = (id: string): number => (found.has(id) ? 0 : book.book.cautions[id]?.always === true ? 2 : 1)
  return [...ids]
    .sort((a, b) => level(a) - level(b) || near(a) - near(b) || (a < b ? -1 : 1))
    .flatMap((id) => {
      const caution = book.book.cautions[id]
      return caution === undefined ? [] : [{ id, level: caution.level, words: caution.words, source: caution.source }]
    })
}

/** Instructions of advising rules, each said once with the positions that it is about. */
function toldOf(book: CompiledBook, judgement: Judgement): readonly string[] {
  const told = new Map<string, { readonly part: string; readonly positions: string[] }>()
  for (const verdict of judgement.verdicts) {
    const subject = book.book.subjects[verdict.part] !== undefined
    for (const step of verdict.steps) {
      const then = book.rules.get(step.rule)?.rule.then
      if (step.outcome !== 'met' || then === undefined || !('advises' in then) || then.instructs === undefined) continue
      const text = reason(book.book, judgement.facts, subject ? 'job' : verdict.part, verdict.at, then.instructs)
      const key = `${verdict.part} ${text}`
      const line = told.get(key) ?? { part: verdict.part, positions: [] }
      line.positions.push(verdict.at)
      told.set(key, line)
    }
  }
  return [...told].map(([key, { part, positions }]) => {
    const text = key.slice(part.length + 1)
    const where = positionsInWords(positions)
    if (where === '') return text
    const name = nameOf(book.book, part)
    return `${name.charAt(0).toUpperCase()}${name.slice(1)} ${where}: ${text}`
  })
}

function measureFirst(book: CompiledBook, judgement: Judgement): readonly ToldQuestion[] {
  const seen = new Set<string>()
  const questions: ToldQuestion[] = []
  // One question a part in turn, so that the first lines of the list settle different parts.
  for (let rank = 0; questions.length < MEASURE_FIRST; rank++) {
    const row = judgement.verdicts.flatMap((v) => v.open.slice(rank, rank + 1))
    if (row.length === 0) break
    for (const q of row) {
      const key = `${q.part}:${q.fact}@${q.at}`
      if (seen.has(key) || questions.length >= MEASURE_FIRST) continue
      seen.add(key)
      questions.push(ask(book, q))
    }
  }
  return questions
}
