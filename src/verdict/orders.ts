import type { CompiledBook } from './compiled.ts'
import type { Judgement } from './judge.ts'

/** Which operation is ordered where: operation → part → positions. */
export type Orders = ReadonlyMap<string, ReadonlyMap<string, readonly string[]>>

export function ordersOf(book: CompiledBook, judgement: Judgement): Orders {
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
        // What is dangerous stays so on its way to the scrap.
        (step.kind === 'advises' && rule.cautions.some((c) => book.book.cautions[c]?.level === 'hazard')) ||
        (step.kind === 'advises' && book.book.subjects[verdict.part] !== undefined)
      if (ordered && 'operations' in rule.then) for (const operation of rule.then.operations) order(operation, verdict.part, verdict.at)
    }
    if (!scrap && verdict.disposition === 'replace') {
      for (const operation of book.book.parts.get(verdict.part)?.file.fitting ?? []) order(operation, verdict.part, verdict.at)
    }
    if (!scrap && (verdict.disposition === 'reuse' || verdict.disposition === 'recondition')) {
      for (const operation of book.book.parts.get(verdict.part)?.file.routine ?? []) order(operation, verdict.part, verdict.at)
    }
  }
  for (const [operation, { insteadOf }] of Object.entries(book.book.operations)) {
    for (const lesser of insteadOf) for (const [part, positions] of orders.get(operation) ?? []) leaveOut(orders, lesser, part, positions)
  }
  return orders
}

/** A tip that is reground need not be dressed as well. */
function leaveOut(orders: Map<string, Map<string, string[]>>, operation: string, part: string, positions: readonly string[]): void {
  const parts = orders.get(operation)
  const left = parts?.get(part)?.filter((p) => !positions.includes(p)) ?? []
  if (left.length > 0) parts?.set(part, left)
  else parts?.delete(part)
  if (parts?.size === 0) orders.delete(operation)
}

export const placesOf = (
  parts: ReadonlyMap<string, readonly string[]>,
): readonly { readonly part: string; readonly positions: readonly string[] }[] =>
  [...parts].map(([part, positions]) => ({ part, positions }))

function stageIndex(book: CompiledBook, stage: string): number {
  return book.book.order.stages.findIndex((s) => s.id === stage)
}

/** Operations in working order: by stage, and within one as rules/job/operations.json lists them. */
export function inOrder(book: CompiledBook, orders: Orders): readonly string[] {
  const stage = (op: string): number => stageIndex(book, book.book.operations[op]?.stage ?? '')
  return Object.keys(book.book.operations)
    .filter((op) => orders.has(op))
    .sort((a, b) => stage(a) - stage(b))
}

/** A proviso stands under the first operation of its rule. */
export function firstOperation(book: CompiledBook, ruleId: string): string | undefined {
  const then = book.rules.get(ruleId)?.rule.then
  return then !== undefined && 'operations' in then ? then.operations[0] : undefined
}
