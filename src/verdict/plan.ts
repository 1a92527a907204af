import { positionsOf } from '../rulebook/positions.ts'
import type { CompiledBook } from './compiled.ts'
import type { EnteredSheet } from './entered.ts'
import type { Judgement } from './judge.ts'
import { ask, providedInWords, type ToldQuestion } from './told.ts'
import type { Verdict } from './verdict.ts'
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
  /** What must turn out while doing it, with figures. */
  readonly provided: readonly { readonly part: string; readonly at: string; readonly words: string }[]
}

export interface PartsLine {
  readonly item: string
  readonly quantity: number
  /** "valve@3E", or the card that supplies it. */
  readonly for: readonly string[]
  /** Set when the choice that it belongs to is not cleared yet. */
  readonly hold?: string
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

/** Which operation is ordered where: operation → part → positions. */
type Orders = ReadonlyMap<string, ReadonlyMap<string, readonly string[]>>

function ordersOf(book: CompiledBook, judgement: Judgement): Orders {
  const orders = new Map<string, Map<string, string[]>>()
  const order = (operation: string, part: string, at: string): void => {
    const parts = orders.get(operation) ?? new Map<string, string[]>()
    const positions = parts.get(part) ?? []
    if (!positions.includes(at)) positions.push(at)
    orders.set(operation, parts.set(part, positions))
  }
  for (const verdict of judgement.verdicts) {
    const scrap = verdict.governing === 'set'
    for (const step of verdict.steps) {
      const rule = book.rules.get(step.rule)?.rule
      if (rule === undefined || step.outcome !== 'met' || scrap) continue
      const ordered =
        (step.kind === 'condemns' && verdict.disposition === 'replace') ||
        (step.kind === 'restores' && verdict.disposition === 'recondition') ||
        (step.kind === 'advises' && verdict.disposition !== 'replace') ||
        (step.kind === 'advises' && book.book.subjects[verdict.part] !== undefined)
      if (ordered && 'operations' in rule.then) for (const operation of rule.then.operations) order(operation, verdict.part, verdict.at)
    }
    if (!scrap && (verdict.disposition === 'reuse' || verdict.disposition === 'recondition')) {
      for (const operation of book.book.parts.get(verdict.part)?.file.routine ?? []) order(operation, verdict.part, verdict.at)
    }
  }
  return orders
}

const placesOf = (parts: ReadonlyMap<string, readonly string[]>): WorkLine['at'] => [...parts].map(([part, positions]) => ({ part, positions }))

function stageIndex(book: CompiledBook, stage: string): number {
  return book.book.order.stages.findIndex((s) => s.id === stage)
}

/** Operations in working order: by stage, and within one as rules/job/operations.json lists them. */
function inOrder(book: CompiledBook, orders: Orders): readonly string[] {
  const stage = (op: string): number => stageIndex(book, book.book.operations[op]?.stage ?? '')
  return Object.keys(book.book.operations)
    .filter((op) => orders.has(op))
    .sort((a, b) => stage(a) - stage(b))
}

function workOrder(book: CompiledBook, judgement: Judgement, orders: Orders): readonly WorkLine[] {
  return inOrder(book, orders).flatMap((operation): WorkLine[] => {
    const entry = book.book.operations[operation]
    if (entry === undefined) return []
    const provided = judgement.verdicts.flatMap((v) =>
      v.provided
        .filter((p) => firstOperation(book, p.rule) === operation)
        .map((p) => ({ part: v.part, at: v.at, words: providedInWords(book, judgement.facts, book.book.subjects[v.part] === undefined ? v.part : 'job', v.at, p) })),
    )
    const stage = book.book.order.stages.find((s) => s.id === entry.stage)
    return [{ stage: stage?.words ?? entry.stage, who: entry.who, operation, words: entry.words, at: placesOf(orders.get(operation) ?? new Map()), provided }]
  })
}

/** A proviso stands under the first operation of its rule. */
function firstOperation(book: CompiledBook, ruleId: string): string | undefined {
  const then = book.rules.get(ruleId)?.rule.then
  return then !== undefined && 'operations' in then ? then.operations[0] : undefined
}

function returnChecks(book: CompiledBook, judgement: Judgement, orders: Orders): readonly ReturnCheck[] {
  const checks: ReturnCheck[] = inOrder(book, orders).flatMap((operation) => {
    const check = book.book.operations[operation]?.check
    return check === undefined ? [] : [{ operation, words: check, at: placesOf(orders.get(operation) ?? new Map()) }]
  })
  for (const v of judgement.verdicts) {
    const part = book.book.subjects[v.part] === undefined ? v.part : 'job'
    for (const p of v.provided) checks.push({ operation: firstOperation(book, p.rule) ?? '', words: providedInWords(book, judgement.facts, part, v.at, p), at: [{ part: v.part, positions: [v.at] }] })
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
      for (const id of cautions) if (step.outcome === 'met' || (step.outcome === 'unknown' && book.book.cautions[id]?.level === 'hazard' && step.kind === 'advises')) ids.add(id)
    }
  }
  for (const operation of orders.keys()) for (const id of book.book.operations[operation]?.cautions ?? []) ids.add(id)
  const level = (id: string): number => (book.book.cautions[id]?.level === 'hazard' ? 0 : 1)
  return [...ids]
    .sort((a, b) => level(a) - level(b) || (a < b ? -1 : 1))
    .flatMap((id) => {
      const caution = book.book.cautions[id]
      return caution === undefined ? [] : [{ id, level: caution.level, words: caution.words, source: caution.source }]
    })
}

function partsList(book: CompiledBook, sheet: EnteredSheet, judgement: Judgement): readonly PartsLine[] {
  const lines = new Map<string, { quantity: number; for: string[]; hold?: string }>()
  const add = (item: string, quantity: number, reason_: string, hold?: string): void => {
    const line = lines.get(item) ?? { quantity: 0, for: [] }
    // Two reasons for the same thing at the same place are one thing: a new valve and a new retainer share their keepers.
    const place = reason_.slice(reason_.indexOf('@'))
    if (line.for.some((f) => f.slice(f.indexOf('@')) === place)) return
    line.quantity += quantity
    line.for.push(reason_)
    if (hold !== undefined) line.hold = hold
    lines.set(item, line)
  }
  for (const verdict of judgement.verdicts) {
    if (verdict.disposition !== 'replace' || verdict.governing === 'set') continue
    const subject = book.book.subjects[verdict.part]
    if (subject === undefined) addPart(book, verdict, add)
    else if (subject.governs !== undefined) addSet(book, sheet, verdict, subject, add)
  }
  for (const { item, quantity, card, held } of kitLines(book, sheet, judgement)) add(item, quantity, card, held)
  return [...lines].sort(([a], [b]) => (a < b ? -1 : 1)).map(([item, line]) => ({ item, ...line }))
}

function addPart(book: CompiledBook, verdict: Verdict, add: (item: string, quantity: number, why: string) => void): void {
  const cls = book.book.parts.get(verdict.part)
  const port = verdict.at.endsWith('E') ? ', exhaust' : verdict.at.endsWith('I') ? ', intake' : ''
  add(`${cls?.file.one ?? verdict.part}${cls?.place === 'valve' && verdict.part === 'valve' ? port : ''}`, 1, `${verdict.part}@${verdict.at}`)
  for (const { item, each } of cls?.file.renews ?? []) add(item, each, `${verdict.part}@${verdict.at}`)
  for (const step of verdict.steps) {
    const then = book.rules.get(step.rule)?.rule.then
    if (step.outcome === 'met' && then !== undefined && 'condemns' in then) for (const item of then.renews) add(item, 1, `${verdict.part}@${verdict.at}`)
  }
}

function addSet(book: CompiledBook, sheet: EnteredSheet, verdict: Verdict, subject: CompiledBook['book']['subjects'][string], add: (item: string, quantity: number, why: string) => void): void {
  const cls = book.book.parts.get(subject.governs ?? '')
  const supplied = subject.suppliedBy === undefined ? undefined : chosenCard(book, sheet, subject.suppliedBy)
  if (cls === undefined || (supplied !== undefined && supplied.kit.length > 0)) return
  const quantity = positionsOf(sheet.engine, cls.place).length
  add(`${cls.file.one}, as a set`, quantity, verdict.part)
}

function chosenCard(book: CompiledBook, sheet: EnteredSheet, kind: string): { readonly name: string; readonly kit: readonly { readonly item: string; readonly quantity: number }[] } | undefined {
  for (const [property, { property: p }] of book.book.parts.get('job')?.properties ?? []) {
    if (p.kind !== 'card' || p.cards !== kind) continue
    const chosen = sheet.build.get(property)
    if (chosen?.form !== 'term') return undefined
    const name = String(chosen.term)
    const card = sheet.engine.cards[kind]?.[name]
    return card === undefined ? undefined : { name, kit: card.kit }
  }
  return undefined
}

/** Lines of the kits chosen; held back while a verdict on the choice is not clear. */
function kitLines(book: CompiledBook, sheet: EnteredSheet, judgement: Judgement): readonly { item: string; quantity: number; card: string; held?: string }[] {
  const kinds = new Set([...(book.book.parts.get('job')?.properties.values() ?? [])].flatMap((e) => (e.property.kind === 'card' ? [e.property.cards] : [])))
  return [...kinds].sort().flatMap((kind) => {
    const card = chosenCard(book, sheet, kind)
    if (card === undefined) return []
    const blocking = judgement.verdicts.find((v) => {
      const subject = book.book.subjects[v.part]
      return subject?.suppliedBy === kind && subject.governs === undefined && (v.disposition === 'replace' || v.disposition === 'undetermined')
    })
    const hold = blocking === undefined ? {} : { held: nameOf(book.book, blocking.part) }
    return card.kit.map((line) => ({ ...line, card: `card ${card.name}`, ...hold }))
  })
}

function toldOf(book: CompiledBook, judgement: Judgement): readonly string[] {
  const told = new Set<string>()
  for (const verdict of judgement.verdicts) {
    const part = book.book.subjects[verdict.part] === undefined ? verdict.part : 'job'
    for (const step of verdict.steps) {
      const then = book.rules.get(step.rule)?.rule.then
      if (step.outcome === 'met' && then !== undefined && 'advises' in then && then.instructs !== undefined) told.add(reason(book.book, judgement.facts, part, verdict.at, then.instructs))
    }
  }
  return [...told]
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
