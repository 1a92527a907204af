import { apply, applyGroup } from '../compute/formula.ts'
import { FORMULAS, GROUP_FORMULAS } from '../compute/registry.ts'
import { interval } from '../quantity/compare.ts'
import type { Measure } from '../quantity/measure.ts'
import type { PartClass, Rulebook } from '../rulebook/book.ts'
import type { Count, Derived } from '../rulebook/schema/properties.ts'
import { ENGINE, portOf, sameSpot } from '../rulebook/positions.ts'
import { literalMeasure } from '../rulebook/literal.ts'
import type { Facts } from './condition.ts'
import type { EnteredFinding, EnteredSheet } from './entered.ts'
import { factKey, type Fact, type FactKey, type KnownQuantity, type LimitFact, type Missing, type Origin, type Reading } from './fact.ts'
import { combinations, extremes, isShort, missing, together } from './readings.ts'
import { factOnSheet, hasPart, layersOf, unstatedChoices } from './sheet-figures.ts'
import { standingLimit } from './standing-limit.ts'
import type { ShopLayer } from './shop.ts'
import { bestU } from './best-instrument.ts'

/**
 * Every fact of one job by address, worked out when first asked: findings over sheets, computed figures from both.
 * Pure: the same sheet, edition and shop give the same facts in any order of asking.
 */
export class JobFacts {
  readonly #book: Rulebook
  readonly #sheet: EnteredSheet
  readonly #shop: ShopLayer
  readonly #z: number
  readonly #layers: ReturnType<typeof layersOf>
  readonly #found = new Map<FactKey, EnteredFinding>()
  readonly #known = new Map<FactKey, Fact>()
  readonly #asking = new Set<FactKey>()
  #counter: (count: Count) => { readonly certain: number; readonly possible: number; readonly of: number } = () => ({
    certain: 0,
    possible: 0,
    of: 0,
  })
  /** Formulas consulted, "tip-stock-left@1". */
  readonly formulas = new Set<string>()

  constructor(book: Rulebook, sheet: EnteredSheet, shop: ShopLayer) {
    this.#book = book
    this.#sheet = sheet
    this.#shop = shop
    const z = book.confidence.quantiles[shop.confidence]
    if (z === undefined)
      throw new Error(
        `No quantile for confidence ${shop.confidence}; rules/confidence.json lists ${Object.keys(book.confidence.quantiles).join(', ')}.`,
      )
    this.#z = z
    this.#layers = layersOf(book, sheet)
    for (const finding of sheet.findings) this.#found.set(factKey(finding.part, finding.property, finding.at), finding)
    for (const [property, value] of sheet.build)
      this.#found.set(factKey('job', property, ENGINE), { part: 'job', at: ENGINE, property, value })
  }

  /** True when somebody entered this fact, even to say that it was not measured. */
  entered(part: string, name: string, at: string): boolean {
    return this.#found.has(factKey(part, name, at))
  }

  /** All facts consulted so far that are known, by address. */
  consulted(): ReadonlyMap<FactKey, Fact> {
    return this.#known
  }

  /** The positions of another part at the same spot; none where the engine lacks the part. */
  spots(part: string, at: string): readonly string[] {
    const place = this.#book.parts.get(part)?.place
    const has = hasPart(this.#sheet.engine, this.#sheet.casting, part)
    return place === undefined || has === 'no' ? [] : sameSpot(this.#sheet.engine, at, place)
  }

  /** The view that one part's rules have: bare names are its own, "job:fuel" another part's at the same spot. */
  of(part: string, at: string): Facts {
    return {
      fact: (name) => this.named(part, at, name),
      limit: (name) => {
        const [other, own] = split(name, part)
        return this.limit(other, own.replace(/^limit\./, ''), at)
      },
    }
  }

  named(part: string, at: string, name: string): Fact {
    const [other, own] = split(name, part)
    if (other === part) return this.fact(part, own, at)
    const target = this.#book.parts.get(other)
    if (target === undefined) return missing('missing', [])
    const spots = this.spots(other, at)
    if (spots.length === 0) return { state: 'not applicable' }
    return together(spots.map((spot) => this.fact(other, own, spot)))
  }

  fact(part: string, name: string, at: string): Fact {
    const key = factKey(part, name, at)
    const known = this.#known.get(key)
    if (known !== undefined) return known
    if (this.#asking.has(key)) throw new Error(`The figure ${key} is computed from itself; mend rules/${part}/properties.json.`)
    this.#asking.add(key)
    const fact = this.#work(part, name, at, key)
    this.#asking.delete(key)
    this.#known.set(key, fact)
    return fact
  }

  #work(part: string, name: string, at: string, key: FactKey): Fact {
    const port = portOf(at)
    if (name === 'port')
      return port === undefined ? { state: 'not applicable' } : { state: 'known', form: 'term', terms: [port], origin: 'position' }
    if (part === 'job' && name === 'stage')
      return { state: 'known', form: 'term', terms: [this.#sheet.stage], origin: 'build', observed: { typed: [this.#sheet.stage] } }
    const cls = this.#book.parts.get(part)
    const planned = this.#plannedByCard(cls, part, name, at)
    if (planned !== undefined) return planned
    const found = this.#found.get(key)
    if (found !== undefined) return this.#fromFinding(found, part, name, key)
    const count = cls?.counts.get(name)
    if (count !== undefined) return this.#count(count)
    const derived = cls?.derived.get(name)
    if (derived !== undefined) return this.#compute(derived, part, at)
    const unstated = unstatedChoices(this.#book, this.#sheet, 'facts', part, name)
    if (unstated.length > 0)
      return missing(
        'missing',
        unstated.map((choice) => factKey('job', choice, ENGINE)),
      )
    return this.#fromSheet(cls, part, name, at) ?? missing('missing', [key])
  }

  /** Who counts positions over their verdicts; set by whoever judges, since facts come before verdicts. */
  countBy(counter: (count: Count) => { readonly certain: number; readonly possible: number; readonly of: number }): void {
    this.#counter = counter
  }

  #count(count: Count): Fact {
    const { certain, possible, of } = this.#counter(count)
    const scale = count.as === 'number' || of === 0 ? 1 : of
    // What may still turn out so leaves a span: half a count beyond it, so that the most possible is not taken for excluded.
    const open = possible > certain
    const reading: Reading = open
      ? { value: certain / scale, u: HALF / scale, lo: certain / scale, hi: (possible + HALF) / scale, best: false }
      : this.#reading({ value: certain / scale, u: 0 }, true)
    return { state: 'known', form: 'quantity', kind: count.as === 'share' ? 'ratio' : 'count', readings: [reading], origin: 'counted' }
  }

  #fromFinding(found: EnteredFinding, part: string, name: string, key: FactKey): Fact {
    const { value } = found
    if (value.form === 'not measured') return missing('not measured', [key])
    const origin: Origin = found.procedure !== undefined ? 'looked over' : part === 'job' ? 'build' : 'finding'
    const who = {
      ...(found.instrument === undefined ? {} : { instrument: found.instrument }),
      ...(found.by === undefined ? {} : { by: found.by }),
      ...(found.observedAt === undefined ? {} : { observedAt: found.observedAt }),
      ...(found.note === undefined ? {} : { note: found.note }),
    }
    if (value.form === 'term') {
      const procedure = found.procedure === undefined ? {} : { procedure: found.procedure }
      return { state: 'known', form: 'term', terms: [value.term], origin, observed: { typed: [value.typed], ...who }, ...procedure }
    }
    const first = value.readings[0]
    if (first === undefined) return missing('not measured', [key])
    const property = this.#book.parts.get(part)?.properties.get(name)?.property
    return {
      state: 'known',
      form: 'quantity',
      kind: first.kind,
      ...(isShort(property, value.readings.length) ? { incomplete: true as const } : {}),
      readings: value.readings.map((r) =>
        this.#reading(r, property === undefined || r.u <= bestU(this.#book, this.#shop, property, r.value)),
      ),
      origin,
      observed: { typed: value.readings.map((r) => r.typed), uFrom: first.uFrom, ...who },
    }
  }

  #reading(m: Measure, best: boolean): Reading {
    return { value: m.value, u: m.u, ...interval(m, this.#z), best }
  }

  /** What a chosen card says of a part that it replaces once for the engine: the old cam's lift is not the new one's. */
  #plannedByCard(cls: PartClass | undefined, part: string, name: string, at: string): Fact | undefined {
    if (cls?.place !== 'engine' || part === 'job' || this.#sheet.stage !== 'received') return undefined
    const cards = this.#layers.filter((layer) => layer.from === 'card' && layer.stock !== true)
    return factOnSheet(cards, part, name, at) === undefined ? undefined : this.#fromSheet(cls, part, name, at)
  }

  #fromSheet(cls: PartClass | undefined, part: string, name: string, at: string): Fact | undefined {
    const property = cls?.properties.get(name)?.property
    const sheet = factOnSheet(this.#layers, part, name, at)
    if (sheet === undefined || property === undefined) return undefined
    if (property.kind === 'yes-no' || property.kind === 'choice' || property.kind === 'card') {
      return { state: 'known', form: 'term', terms: [sheet.value], origin: sheet.from, observed: { typed: [String(sheet.value)] } }
    }
    const measure = literalMeasure(String(sheet.value), property.kind)
    const u = sheet.doubt === undefined ? 0 : literalMeasure(sheet.doubt, property.kind) / 2
    return {
      state: 'known',
      form: 'quantity',
      kind: property.kind,
      readings: [this.#reading({ value: measure, u }, u === 0)],
      origin: sheet.from,
      observed: { typed: [String(sheet.value)], uFrom: u === 0 ? 'exact' : 'stated' },
    }
  }

  #compute(derived: Derived, part: string, at: string): Fact {
    if (derived.grid !== undefined) return this.#overGrid(derived.formula, derived.grid, part, at)
    const formula = FORMULAS.get(derived.formula)
    if (formula === undefined) throw new Error(`No formula ${derived.formula}.`)
    this.formulas.add(derived.formula)
    const inputs: Record<string, readonly Measure[]> = {}
    const needs: FactKey[] = []
    const used: string[] = []
    let why: Missing['why'] | undefined
    let best = true
    let incomplete = false
    for (const [input, name] of Object.entries(derived.inputs).sort(([a], [b]) => (a < b ? -1 : 1))) {
      const value: Fact | LimitFact = name.includes('limit.') ? this.of(part, at).limit(name) : this.named(part, at, name)
      used.push(this.#address(name, part, at))
      if (value.state === 'not applicable') return value
      if (value.state === 'missing') {
        needs.push(...value.needs)
        why = why ?? value.why
      } else if ('readings' in value) {
        inputs[input] = value.readings
        best = best && value.readings.every((r) => r.best)
        incomplete = incomplete || value.incomplete === true
      } else if ('value' in value) inputs[input] = [{ value: value.value, u: 0 }]
    }
    if (why !== undefined) return missing(why, [...new Set(needs)])
    const readings: Reading[] = []
    // Several readings (stations, axes) are worked out in every combination: the largest bore against the smallest stem.
    for (const one of combinations(inputs)) {
      const result = apply(formula, one)
      if (!result.ok)
        return missing(
          'out of range',
          used.filter((u): u is FactKey => !u.includes('limit.')),
          result.why,
        )
      readings.push(this.#reading({ value: result.value, u: result.u }, best))
    }
    const known: KnownQuantity = {
      state: 'known',
      form: 'quantity',
      kind: formula.output.kind,
      readings: extremes(readings),
      ...(incomplete ? { incomplete } : {}),
      origin: 'computed',
      formula: derived.formula,
      inputs: used,
    }
    return known
  }

  /** A figure over a grid of heights: every place of the grid must have been read. */
  #overGrid(key: string, grid: string, part: string, at: string): Fact {
    const formula = GROUP_FORMULAS.get(key)
    const property = this.#book.parts.get(part)?.properties.get(grid)?.property
    const heights = this.fact(part, grid, at)
    if (formula === undefined || property === undefined || !('readings' in property)) throw new Error(`No formula ${key} over a grid.`)
    this.formulas.add(key)
    if (heights.state !== 'known' || heights.form !== 'quantity') return heights.state === 'known' ? { state: 'not applicable' } : heights
    const across = property.readings?.axes.length ?? 1
    const places = heights.readings.map((_reading, i) => ({
      x: exactly((PITCH * (i - (i % across))) / across),
      y: exactly(PITCH * (i % across)),
    }))
    const all: Readonly<Record<string, readonly Measure[]>> = { x: places.map((p) => p.x), y: places.map((p) => p.y), z: heights.readings }
    const result = applyGroup(formula, Object.fromEntries(Object.keys(formula.inputs).map((name) => [name, all[name] ?? []])))
    if (!result.ok) return missing('out of range', [factKey(part, grid, at)], result.why)
    const best = heights.readings.every((r) => r.best)
    const known = {
      state: 'known',
      form: 'quantity',
      kind: formula.output.kind,
      readings: [this.#reading(result, best)],
      origin: 'computed',
    } as const
    return { ...known, ...(heights.incomplete === true ? { incomplete: true } : {}), formula: key, inputs: [factKey(part, grid, at)] }
  }

  #address(name: string, part: string, at: string): string {
    const [other, own] = split(name, part)
    const place = this.#book.parts.get(other)?.place
    const spot = place === undefined ? at : (sameSpot(this.#sheet.engine, at, place)[0] ?? at)
    return own.startsWith('limit.') ? `${other}:${own}@${at}` : factKey(other, own, spot)
  }

  /** The limit that governs here, and whose it is. */
  limit(part: string, id: string, at: string): LimitFact {
    const named = (of: string, spot: string, name: string): Fact => this.named(of, spot, name)
    return standingLimit({ book: this.#book, sheet: this.#sheet, shop: this.#shop, layers: this.#layers, named }, part, id, at)
  }
}

const split = (name: string, part: string): readonly [string, string] => {
  const colon = name.indexOf(':')
  return colon < 0 ? [part, name] : [name.slice(0, colon), name.slice(colon + 1)]
}

const HALF = 0.5

/** How far apart the places of a grid are taken to lie, mm: a flatness does not hang on it, but a deck out of level must not look like a slope. */
const PITCH = 50

const exactly = (value: number): Measure => ({ value, u: 0 })
