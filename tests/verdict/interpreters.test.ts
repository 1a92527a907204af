/** Two interpreters of the same conditions must agree: on the real rulebook, and on rules that no file uses yet. */
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { interval } from '../../src/quantity/compare.ts'
import { OPERATORS, type Condition, type Leaf } from '../../src/rulebook/schema/rule.ts'
import { compile, type Facts, type Literals } from '../../src/verdict/condition.ts'
import type { CompiledBook } from '../../src/verdict/compiled.ts'
import type { Fact, LimitFact } from '../../src/verdict/fact.ts'
import { judge } from '../../src/verdict/judge.ts'
import { prepareSecondOpinion, type SecondOpinion } from '../../src/verdict/second-opinion.ts'
import { adopter, book, entered, judged, randomSheet, trade } from './sheets.ts'

const QUANTITIES = ['length-a', 'length-b', 'load']
const LIMITS = ['limit.one', 'limit.two']
const CHOICES = ['plain', 'cracked', 'worn']
const Z = 1.6448536269514722

const ordering = fc.constantFrom(...OPERATORS.filter((o) => !o.includes('is') && !o.includes('among')))
const quantityLeaf: fc.Arbitrary<Leaf> = fc.record({
  fact: fc.constantFrom(...QUANTITIES),
  operator: ordering,
  value: fc.oneof(
    fc.constantFrom(...LIMITS).map((fact) => ({ fact })),
    fc.integer({ min: -3, max: 3 }).map(String),
  ),
})
const termLeaf: fc.Arbitrary<Leaf> = fc.oneof(
  fc.record({ fact: fc.constant('kind'), operator: fc.constantFrom('is' as const, 'is-not' as const), value: fc.constantFrom(...CHOICES) }),
  fc.record({
    fact: fc.constant('kind'),
    operator: fc.constantFrom('among' as const, 'not-among' as const),
    value: fc.uniqueArray(fc.constantFrom(...CHOICES), { minLength: 1 }),
  }),
  fc.record({ fact: fc.constant('seen'), operator: fc.constantFrom('is' as const, 'is-not' as const), value: fc.boolean() }),
)
const leaf = fc.oneof(quantityLeaf, termLeaf)
const { condition } = fc.letrec<{ condition: Condition; group: Condition }>((tie) => ({
  group: fc.oneof(
    fc.array(tie('condition'), { minLength: 1, maxLength: 4 }).map((all) => ({ all })),
    fc.array(tie('condition'), { minLength: 1, maxLength: 4 }).map((any) => ({ any })),
  ),
  condition: fc.oneof({ depthSize: 'small', withCrossShrink: true }, leaf, tie('group')),
}))

/** Small whole numbers, so that readings fall on limits and intervals on each other's ends. */
const reading = fc
  .record({ value: fc.integer({ min: -3, max: 3 }), u: fc.constantFrom(0, 0.1, 1 / Z, 2 / Z), best: fc.boolean() })
  .map(({ value, u, best }) => ({ value, u, ...interval({ value, u }, Z), best }))
const gap: fc.Arbitrary<Fact> = fc.constantFrom<Fact>(
  { state: 'missing', why: 'missing', needs: [] },
  { state: 'missing', why: 'not measured', needs: [] },
  { state: 'not applicable' },
)
const quantity: fc.Arbitrary<Fact> = fc.oneof(
  {
    weight: 3,
    arbitrary: fc
      .tuple(fc.array(reading, { minLength: 1, maxLength: 4 }), fc.boolean())
      .map(([readings, short]): Fact => ({
        state: 'known',
        form: 'quantity',
        kind: 'length',
        readings,
        ...(short ? { incomplete: true } : {}),
        origin: 'finding',
      })),
  },
  { weight: 1, arbitrary: gap },
)
const termOf = (of: fc.Arbitrary<string | boolean>): fc.Arbitrary<Fact> =>
  fc.oneof(
    {
      weight: 3,
      arbitrary: fc
        .array(of, { minLength: 1, maxLength: 3 })
        .map((terms): Fact => ({ state: 'known', form: 'term', terms, origin: 'finding' })),
    },
    { weight: 1, arbitrary: gap },
  )
const limit: fc.Arbitrary<LimitFact> = fc.oneof(
  {
    weight: 3,
    arbitrary: fc
      .record({ value: fc.integer({ min: -3, max: 3 }), whenTooClose: fc.constantFrom('measure' as const, 'safe-side' as const) })
      .map((l): LimitFact => ({ state: 'known', id: 'x:y', kind: 'length', typed: String(l.value), from: 'maker', ...l })),
  },
  { weight: 1, arbitrary: fc.constant<LimitFact>({ state: 'missing', why: 'limit not adopted', needs: [] }) },
)
const world: fc.Arbitrary<Facts> = fc
  .record({
    facts: fc.record({
      'length-a': quantity,
      'length-b': quantity,
      load: quantity,
      kind: termOf(fc.constantFrom(...CHOICES)),
      seen: termOf(fc.boolean()),
    }),
    limits: fc.record({ 'limit.one': limit, 'limit.two': limit }),
  })
  .map(({ facts, limits }) => ({
    fact: (name) => facts[name as keyof typeof facts],
    limit: (name) => limits[name as keyof typeof limits],
  }))

const literal: Literals = (l) => (typeof l.value === 'string' && QUANTITIES.includes(l.fact) ? Number(l.value) : undefined)

describe('the two interpreters', () => {
  it('agree on random conditions over random facts, on either safe side', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(condition, { minLength: 1, maxLength: 5 }),
        fc.constantFrom('met' as const, 'not met' as const),
        fc.array(world, { minLength: 1, maxLength: 4 }),
        async (conditions, safe, worlds) => {
          const second = prepareSecondOpinion(
            conditions.map((c, i) => ({ key: `rule ${i}`, condition: c, safe })),
            literal,
          )
          const first = conditions.map((c) => compile(c, safe, literal))
          // Overlapping runs over one prepared engine: none may lose a rule.
          const answers = await Promise.all(worlds.map((w) => second.answers(w)))
          worlds.forEach((w, n) =>
            first.forEach((evaluate, i) => expect(answers[n]?.get(`rule ${i}`), JSON.stringify(conditions[i])).toBe(evaluate(w).answer)),
          )
        },
      ),
      { numRuns: 1500 },
    )
  })

  it('reach all three answers in that test: it could fail', () => {
    const seen = new Map<string, number>()
    fc.assert(
      fc.property(condition, world, (c, w) => {
        const { answer } = compile(c, 'met', literal)(w)
        seen.set(answer, (seen.get(answer) ?? 0) + 1)
      }),
      { numRuns: 1000 },
    )
    for (const answer of ['met', 'not met', 'unknown']) expect(seen.get(answer) ?? 0, answer).toBeGreaterThan(50)
  })

  it('agree on the real rulebook over random sheets', async () => {
    await fc.assert(
      fc.asyncProperty(randomSheet, fc.constantFrom(trade, adopter), async (sheet, shop) => {
        const { verdicts, secondOpinion } = await judged(sheet, shop, true)
        expect(verdicts.flatMap((v) => v.disagreement ?? [])).toEqual([])
        expect(secondOpinion).toEqual({ ran: true, agrees: true })
      }),
      { numRuns: 60 },
    )
  })

  it('complement each other leaf by leaf: "at most" is met where "above" is not, and so on, and both are unknown together', () => {
    const complement = {
      'at-most': 'above',
      above: 'at-most',
      'at-least': 'below',
      below: 'at-least',
      is: 'is-not',
      'is-not': 'is',
      among: 'not-among',
      'not-among': 'among',
    } as const
    const turned = { met: 'not met', 'not met': 'met', unknown: 'unknown' } as const
    fc.assert(
      fc.property(leaf, world, (l, w) => {
        // The safe side turns with the leaf: what condemns above a limit fails a check at most.
        const one = compile(l, 'met', literal)(w).answer
        const other = compile({ ...l, operator: complement[l.operator] }, 'not met', literal)(w).answer
        expect(other).toBe(turned[one])
      }),
      { numRuns: 2000 },
    )
  })

  it('leave a part undetermined where they disagree, and keep both answers', async () => {
    const liar: SecondOpinion = {
      answers: (facts) =>
        (book.second.get('rocker-stud') as SecondOpinion)
          .answers(facts)
          .then((said) => new Map([...said].map(([key]) => [key, 'not met'] as const))),
    }
    const lying: CompiledBook = { ...book, second: new Map([...book.second, ['rocker-stud', liar]]) }
    const sheet = entered(
      {
        job: 'a lie',
        engine: 'QL-6P',
        build: {},
        findings: [{ part: 'rocker-stud', at: '3E', property: 'shoulder.groove-felt', value: true }],
      },
      trade,
    )
    const { verdicts, secondOpinion } = await judge(lying, sheet, trade, { secondOpinion: true })
    const stud = verdicts.find((v) => v.part === 'rocker-stud')
    expect(stud?.disposition).toBe('undetermined')
    expect(stud?.disagreement?.find((d) => d.rule === 'rocker-stud.groove-condemns')).toMatchObject({ first: 'met', second: 'not met' })
    expect(secondOpinion).toEqual({ ran: true, agrees: false })
  })
})
