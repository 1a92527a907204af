import { positionsOf } from '../rulebook/positions.ts'
import type { CompiledBook } from './compiled.ts'
import type { EnteredSheet } from './entered.ts'
import type { Judgement } from './judge.ts'
import type { Verdict } from './verdict.ts'
import { nameOf } from './words.ts'

export interface PartsLine {
  readonly item: string
  readonly quantity: number
  /** "valve@3E", or the card that supplies it. */
  readonly for: readonly string[]
  /** Set when the choice that it belongs to is not cleared yet. */
  readonly hold?: string
}

/** Parts to order: what is replaced with what is renewed beside it, sets, and the kits of the cards chosen. */
export function partsList(book: CompiledBook, sheet: EnteredSheet, judgement: Judgement): readonly PartsLine[] {
  const lines = new Map<string, { quantity: number; for: string[]; hold?: string }>()
  const add = (item: string, quantity: number, reason_: string, hold?: string): void => {
    const line = lines.get(item) ?? { quantity: 0, for: [] }
    // Two reasons for the same thing at the same place are one thing: a new valve and a new retainer share their keepers.
    if (line.for.some((f) => placeOf(f) === placeOf(reason_))) return
    line.quantity += quantity
    line.for.push(reason_)
    if (hold !== undefined) line.hold = hold
    lines.set(item, line)
  }
  const fromSets = new Set(
    judgement.verdicts.flatMap((v) => {
      const governs = v.disposition === 'replace' ? book.book.subjects[v.part]?.governs : undefined
      return governs === undefined ? [] : (book.book.parts.get(governs)?.file.renews ?? []).map((r) => r.item)
    }),
  )
  // Keepers that come with the new retainers are not bought again with a valve, and never of another taper.
  const addSingly: typeof add = (item, quantity, reason_) => (fromSets.has(item) ? undefined : add(item, quantity, reason_))
  for (const verdict of judgement.verdicts) {
    if (verdict.governing === 'set') continue
    if (verdict.disposition === 'recondition') addRenewed(book, verdict, addSingly)
    if (verdict.disposition !== 'replace') continue
    const subject = book.book.subjects[verdict.part]
    if (subject === undefined) addPart(book, verdict, addSingly)
    else if (subject.governs !== undefined) addSet(book, sheet, verdict, subject, add)
  }
  for (const { item, quantity, card, held } of kitLines(book, sheet, judgement)) add(item, quantity, card, held)
  return [...lines].sort(([a], [b]) => (a < b ? -1 : 1)).map(([item, line]) => ({ item, ...line }))
}

/** "valve@3E" and "retainer@3E" are one place; a set or a card is a place of its own. */
const placeOf = (line: string): string => (line.includes('@') ? line.slice(line.indexOf('@')) : line)

function addPart(book: CompiledBook, verdict: Verdict, add: (item: string, quantity: number, why: string) => void): void {
  const cls = book.book.parts.get(verdict.part)
  const port = verdict.at.endsWith('E') ? ', exhaust' : verdict.at.endsWith('I') ? ', intake' : ''
  add(
    `${cls?.file.one ?? verdict.part}${cls?.place === 'valve' && verdict.part === 'valve' ? port : ''}`,
    1,
    `${verdict.part}@${verdict.at}`,
  )
  for (const { item, each } of cls?.file.renews ?? []) add(item, each, `${verdict.part}@${verdict.at}`)
  addRenewed(book, verdict, add)
}

/** What the met condemning and restoring rules of a verdict renew. */
function renewsOf(book: CompiledBook, verdict: Verdict): readonly { readonly item: string; readonly each: number }[] {
  return verdict.steps.flatMap((step) => {
    const then = book.rules.get(step.rule)?.rule.then
    if (step.outcome !== 'met' || then === undefined || !('renews' in then)) return []
    return then.renews.map((one) => (typeof one === 'string' ? { item: one, each: 1 } : one))
  })
}

function addRenewed(book: CompiledBook, verdict: Verdict, add: (item: string, quantity: number, why: string) => void): void {
  for (const { item, each } of renewsOf(book, verdict)) add(item, each, `${verdict.part}@${verdict.at}`)
}

function addSet(
  book: CompiledBook,
  sheet: EnteredSheet,
  verdict: Verdict,
  subject: CompiledBook['book']['subjects'][string],
  add: (item: string, quantity: number, why: string) => void,
): void {
  const cls = book.book.parts.get(subject.governs ?? '')
  const supplied = subject.suppliedBy === undefined ? undefined : chosenCard(book, sheet, subject.suppliedBy)
  if (cls === undefined || (supplied !== undefined && supplied.kit.length > 0)) return
  const quantity = positionsOf(sheet.engine, cls.place).length
  // What the deciding rule names is bought for every position; else the part as it is, with what is renewed beside it.
  const named = renewsOf(book, verdict)
  if (named.length > 0) for (const { item, each } of named) add(item, each * quantity, verdict.part)
  else {
    add(`${cls.file.one}, as a set`, quantity, verdict.part)
    for (const { item, each } of cls.file.renews) add(item, each * quantity, verdict.part)
  }
}

function chosenCard(
  book: CompiledBook,
  sheet: EnteredSheet,
  kind: string,
): { readonly name: string; readonly kit: readonly { readonly item: string; readonly quantity: number }[] } | undefined {
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
function kitLines(
  book: CompiledBook,
  sheet: EnteredSheet,
  judgement: Judgement,
): readonly { item: string; quantity: number; card: string; held?: string }[] {
  const kinds = new Set(
    [...(book.book.parts.get('job')?.properties.values() ?? [])].flatMap((e) => (e.property.kind === 'card' ? [e.property.cards] : [])),
  )
  return [...kinds].sort().flatMap((kind) => {
    const card = chosenCard(book, sheet, kind)
    if (card === undefined) return []
    const blocking = judgement.verdicts.find((v) => {
      const subject = book.book.subjects[v.part]
      return (
        subject?.suppliedBy === kind && subject.governs === undefined && (v.disposition === 'replace' || v.disposition === 'undetermined')
      )
    })
    const hold = blocking === undefined ? {} : { held: nameOf(book.book, blocking.part) }
    return card.kit.map((line) => ({ ...line, card: `card ${card.name}`, ...hold }))
  })
}
