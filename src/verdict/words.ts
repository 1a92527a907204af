import { show } from '../quantity/show.ts'
import { UNITS } from '../quantity/units.ts'
import type { Rulebook } from '../rulebook/book.ts'
import { ENGINE, HEAD, portOf } from '../rulebook/positions.ts'
import type { Fact, KnownQuantity, LimitFact } from './fact.ts'
import type { JobFacts } from './facts.ts'
import { parse } from './open.ts'

/** The name of what a verdict is about: a part class, or a subject of the job. */
export function nameOf(book: Rulebook, about: string): string {
  return book.parts.get(about)?.file.one ?? book.subjects[about]?.one ?? about
}

/** A position in words: " on 3 exhaust", " on cylinder 3"; nothing for the engine as a whole. */
export function atInWords(book: Rulebook, at: string): string {
  const port = portOf(at)
  const cylinder = at.replace(/[IE]$/, '')
  if (port !== undefined) return fill(book.phrases.positions.valve, { cylinder, port })
  if (at === HEAD || at === ENGINE) return book.phrases.positions.engine
  if (!/^\d+$/.test(at)) return fill(book.phrases.positions.head, { bank: at })
  return fill(book.phrases.positions.cylinder, { cylinder })
}

/** Fills {name} marks of a phrase; a mark without a word stays visible, so that a gap is seen. */
export function fill(phrase: string, words: Readonly<Record<string, string | number>>): string {
  return phrase.replace(/\{([a-z]+)\}/g, (mark, name: string) => (words[name] === undefined ? mark : String(words[name])))
}

/**
 * Renders a rule's reason: {name} prints a fact or limit in both unit systems, {name|text {} text} stands only where
 * the fact is known.
 */
export function reason(book: Rulebook, facts: JobFacts, part: string, at: string, template: string): string {
  const figure = (name: string): string | undefined => figureOf(book, facts, part, at, name)
  const said = template
    .replace(/\{([^{}|]+)\|((?:[^{}]|\{\})*)\}/g, (_mark, name: string, text: string) => {
      const shown = figure(name.trim())
      return shown === undefined ? '' : text.replaceAll('{}', shown)
    })
    .replace(/\{([^{}|]+)\}/g, (_mark, name: string) => figure(name.trim()) ?? `${labelOf(book, part, name.trim())} (not known)`)
  return `${said.charAt(0).toUpperCase()}${said.slice(1)}`
}

/** One fact or limit as figures in words; undefined when it is not known. */
export function figureOf(book: Rulebook, facts: JobFacts, part: string, at: string, name: string): string | undefined {
  const view = facts.of(part, at)
  if (name.includes('limit.')) return limitInWords(view.limit(name))
  return factInWords(book, facts, part, name, view.fact(name))
}

function limitInWords(limit: LimitFact): string | undefined {
  return limit.state === 'known' ? show(limit.value, limit.kind, { typed: limit.typed }) : undefined
}

function factInWords(book: Rulebook, facts: JobFacts, part: string, name: string, fact: Fact): string | undefined {
  if (fact.state !== 'known') return undefined
  if (fact.form === 'term') {
    const property = propertyOf(book, part, name)
    return fact.terms
      .map((t) => (typeof t === 'boolean' ? (t ? 'yes' : 'no') : property?.kind === 'choice' ? (property.choices[t]?.says ?? t) : t))
      .join(', ')
  }
  const values = fact.readings.map((r) => r.value)
  const unit = unitOfJob(facts, fact)
  const shown = (value: number): string => {
    const typed = fact.observed?.typed[values.indexOf(value)]
    return show(value, fact.kind, typed !== undefined ? { typed } : unit !== undefined ? { unit } : {})
  }
  const [least, most] = [Math.min(...values), Math.max(...values)]
  if (values.length === 0) return undefined
  return least === most ? shown(least) : `${shown(least)} to ${shown(most)}`
}

/** A computed figure is said in the system in which the figures that went into it were typed: an inch shop reads inches. */
function unitOfJob(facts: JobFacts, fact: KnownQuantity): string | undefined {
  const inch = typedBehind(facts, fact).some((text) =>
    UNITS.some((u) => u.system === 'inch' && u.rare !== true && u.symbol !== '' && text.includes(u.symbol)),
  )
  return inch ? UNITS.find((u) => u.kind === fact.kind && u.system === 'inch' && u.rare !== true)?.id : undefined
}

function typedBehind(facts: JobFacts, fact: KnownQuantity): readonly string[] {
  if (fact.observed !== undefined) return fact.observed.typed
  return (fact.inputs ?? []).flatMap((address) => {
    if (address.includes('limit.')) return []
    const { part, name, at } = parse(address as `${string}:${string}@${string}`)
    const input = facts.fact(part, name, at)
    return input.state === 'known' && input.form === 'quantity' ? typedBehind(facts, input) : []
  })
}

function propertyOf(
  book: Rulebook,
  part: string,
  name: string,
): NonNullable<ReturnType<NonNullable<ReturnType<Rulebook['parts']['get']>>['properties']['get']>>['property'] | undefined {
  const colon = name.indexOf(':')
  return book.parts.get(colon < 0 ? part : name.slice(0, colon))?.properties.get(colon < 0 ? name : name.slice(colon + 1))?.property
}

/** What a property, derived figure or limit is called. */
export function labelOf(book: Rulebook, part: string, name: string): string {
  const colon = name.indexOf(':')
  const cls = book.parts.get(colon < 0 ? part : name.slice(0, colon))
  const own = colon < 0 ? name : name.slice(colon + 1)
  return (
    cls?.properties.get(own)?.property.label ?? cls?.derived.get(own)?.label ?? cls?.limits.get(own.replace(/^limit\./, ''))?.label ?? name
  )
}
