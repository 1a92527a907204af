import { betterInstruments } from './best-instrument.ts'
import type { CompiledBook } from './compiled.ts'
import type { LeafTrace, Why } from './condition.ts'
import type { FactKey } from './fact.ts'
import type { JobFacts } from './facts.ts'
import type { Outcomes, RuleOutcome } from './outcome.ts'
import type { ShopLayer } from './shop.ts'
import type { OpenQuestion } from './verdict.ts'

interface Waiting {
  readonly part: string
  readonly at: string
  readonly fact: string
  readonly why: Why
  readonly rules: Map<string, boolean>
  readonly better?: readonly string[]
}

/**
 * What is still to be known about a part, in the order that settles most: what a condemning rule waits for first,
 * then what more rules wait for, then what is easier to measure.
 */
export function openQuestions(
  book: CompiledBook,
  shop: ShopLayer,
  facts: JobFacts,
  outcomes: Outcomes,
  unknown: readonly RuleOutcome[],
): readonly OpenQuestion[] {
  const waiting = new Map<string, Waiting>()
  for (const outcome of unknown) collect(outcome, outcome)
  return [...waiting.values()].sort(byWorth).map(({ rules, ...rest }) => ({ ...rest, rules: [...rules.keys()].sort() }))

  function collect(outcome: RuleOutcome, for_: RuleOutcome): void {
    for (const leaf of outcome.leaves) if (leaf.answer === 'unknown') collectLeaf(leaf, outcome, for_)
    // A dormant rule that may be awake waits for whatever its openers wait for.
    for (const opener of outcome.waitsFor) {
      const compiled = book.rules.get(opener.rule)
      if (compiled !== undefined && compiled !== for_.compiled) collect(outcomes.of(compiled, opener.at), for_)
    }
  }

  function collectLeaf(leaf: LeafTrace, outcome: RuleOutcome, for_: RuleOutcome): void {
    const own = ownKey(leaf.fact, outcome)
    const why = leaf.why ?? 'missing'
    const addresses: readonly FactKey[] = leaf.needs !== undefined && leaf.needs.length > 0 ? leaf.needs : [own]
    for (const address of addresses.flatMap((a) => (why === 'too close' ? doubtful(a) : [a]))) note(address, why, for_)
  }

  /** A computed figure is too close because of what went into it: the readings that carry the doubt. */
  function doubtful(address: FactKey): readonly FactKey[] {
    const { part, name, at } = parse(address)
    const fact = facts.fact(part, name, at)
    if (fact.state !== 'known' || fact.form !== 'quantity') return []
    if (fact.origin !== 'computed') return fact.readings.some((r) => r.u > 0) ? [address] : []
    return (fact.inputs ?? []).filter((i): i is FactKey => !i.includes('limit.')).flatMap(doubtful)
  }

  function note(address: FactKey, why: Why, for_: RuleOutcome): void {
    const { part, name, at } = parse(address)
    const key = `${address} ${why === 'too close' ? why : ''}`
    const condemns = for_.compiled.kind === 'condemns'
    const known = waiting.get(key)
    if (known !== undefined) {
      known.rules.set(for_.compiled.rule.id, condemns)
      return
    }
    const better = why === 'too close' ? remedy(part, name, at) : undefined
    waiting.set(key, {
      part,
      at,
      fact: name,
      why,
      rules: new Map([[for_.compiled.rule.id, condemns]]),
      ...(better === undefined || better.length === 0 ? {} : { better }),
    })
  }

  function remedy(part: string, name: string, at: string): readonly string[] {
    const property = book.book.parts.get(part)?.properties.get(name)?.property
    const fact = facts.fact(part, name, at)
    const reading = fact.state === 'known' && fact.form === 'quantity' ? fact.readings[0] : undefined
    if (property === undefined || reading === undefined) return []
    return betterInstruments(book.book, shop, property, reading.value, reading.u)
  }

  function byWorth(a: Waiting, b: Waiting): number {
    const condemning = (w: Waiting): number => [...w.rules.values()].filter(Boolean).length
    const effort = (w: Waiting): number => book.book.parts.get(w.part)?.properties.get(w.fact)?.property.effort ?? 1
    // Of readings too close to call, one that can be read better comes before one that can't.
    const hopeless = (w: Waiting): number => (w.why === 'too close' && w.better === undefined ? 1 : 0)
    return (
      hopeless(a) - hopeless(b) ||
      (condemning(a) > 0 ? 0 : 1) - (condemning(b) > 0 ? 0 : 1) ||
      b.rules.size - a.rules.size ||
      effort(a) - effort(b) ||
      (`${a.part}:${a.fact}@${a.at}` < `${b.part}:${b.fact}@${b.at}` ? -1 : 1)
    )
  }
}

function ownKey(name: string, outcome: RuleOutcome): FactKey {
  return name.includes(':') ? (`${name}@${outcome.at}` as FactKey) : `${outcome.compiled.part}:${name}@${outcome.at}`
}

/** Takes an address apart: "valve:tip.stock-left@3E". */
export function parse(address: FactKey): { readonly part: string; readonly name: string; readonly at: string } {
  const colon = address.indexOf(':')
  const atSign = address.lastIndexOf('@')
  return { part: address.slice(0, colon), name: address.slice(colon + 1, atSign), at: address.slice(atSign + 1) }
}
